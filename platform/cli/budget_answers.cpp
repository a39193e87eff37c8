// SPDX-License-Identifier: Apache-2.0
// Budgets and hidden points in words and JSON.
#include "cli/budget_answers.hpp"

#include "base/text.hpp"
#include "catalogue/pick.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {

Result<std::optional<double>> budgetMinutes(const std::string &typed)
{
    if (typed.empty() || typed == "any")
        return std::optional<double>();
    const auto minutes = parseDouble(typed);
    if (minutes && *minutes > 0.0 && *minutes <= 24 * 60)
        return minutes;
    return Error{Errc::Usage, "not a time in minutes: \"" + typed + "\"", "--minutes",
                 "use 10, 25, 60 or any"};
}

std::string budgetWords(const BudgetedTape &fitted, double minutes, const Texts &texts)
{
    std::string out = texts.phrase("budget_kept", {fixed(fitted.minutes, 1), fixed(minutes, 0)}) + "\n";
    if (fitted.leftOut.empty())
        return out + texts.phrase("left_out_none") + "\n";
    const LeftOut *before = nullptr;
    for (const LeftOut &left : fitted.leftOut) {
        if (before == nullptr || before->ownHoldList != left.ownHoldList)
            out += texts.phrase(left.ownHoldList ? "left_out_holds" : "left_out_rest") + "\n";
        before = &left;
        out += "  " + padded(texts.point(left.point).title, 36) +
               texts.phrase("harm", {fixed(left.harm, 3), fixed(left.minutes, 1)}) + "\n";
    }
    return out;
}

Value budgetJson(const BudgetedTape &fitted, double minutes)
{
    Value::List leftOut;
    for (const LeftOut &left : fitted.leftOut)
        leftOut.push_back(Value::Map{{"point", left.point},
                                     {"harm", left.harm},
                                     {"minutes", left.minutes},
                                     {"hold_list", left.ownHoldList}});
    return Value::Map{
        {"minutes", minutes}, {"kept_minutes", fitted.minutes}, {"harm", fitted.harm}, {"left_out", leftOut}};
}

std::string hiddenWords(const Catalogue &catalogue, const Rig &rig, const Texts &texts)
{
    std::string out;
    for (const Point *point : hiddenInSight(catalogue, rig))
        out += texts.point(point->slug).title + ": " +
               texts.phrase("hidden_by", {point->hidden->by, formatDate(point->hidden->date)}) + "\n";
    return out;
}

Value hiddenJson(const Catalogue &catalogue, const Rig &rig)
{
    Value::List list;
    for (const Point *point : hiddenInSight(catalogue, rig))
        list.push_back(Value::Map{{"point", point->slug},
                                  {"by", point->hidden->by},
                                  {"date", formatDate(point->hidden->date)},
                                  {"note", point->hidden->note}});
    return list;
}

} // namespace snugwalk::cli
