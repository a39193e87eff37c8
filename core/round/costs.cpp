// SPDX-License-Identifier: Apache-2.0
// Reading amounts without guessing, and adding up like with like.
#include "round/costs.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

#include "base/number_style.hpp"
#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t longest = 40; // what is longer is a sentence
constexpr std::string_view numberLetters = "0123456789.,' ";

struct Sign {
    std::string_view typed;
    std::string_view currency;
};
constexpr std::array signs = {Sign{"NZ$", "NZD"}, Sign{"US$", "USD"}, Sign{"CA$", "CAD"}, Sign{"A$", "AUD"},
                              Sign{"\u20ac", "EUR"}};
constexpr std::array<std::string_view, 7> threeDecimals = {"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"};

bool isDigit(char c) { return c >= '0' && c <= '9'; }

// How languages write numbers; all that read one in full must agree.
constexpr std::array<NumberStyle, 3> styles = {NumberStyle{'.', ','}, NumberStyle{',', '.'},
                                               NumberStyle{',', ' '}};

std::string upper(std::string_view text)
{
    std::string out(text);
    for (char &c : out)
        c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    return out;
}

// A code, or a sign: anything else is a word, and words are not read.
std::optional<std::string> currencyOf(std::string_view typed)
{
    const std::string text = upper(typed);
    if (text.empty())
        return text;
    for (const Sign &sign : signs) {
        if (text == sign.typed)
            return std::string(sign.currency);
    }
    const bool isCode = text.size() == 3 &&
                        std::all_of(text.begin(), text.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
    const bool isSign = text == "$" || text == "\u00a3" || text == "\u00a5" || text == "\u20b9" ||
                        text == "KR" || text == "FR";
    if (isCode)
        return text;
    return isSign ? std::optional(std::string(typed)) : std::nullopt;
}

// Whether its only mark stands before exactly three digits at the end.
bool isThreeAfterOneMark(std::string_view number)
{
    const auto marks =
        std::count_if(number.begin(), number.end(), [](char c) { return c == '.' || c == ','; });
    const std::size_t at = number.find_first_of(".,");
    return marks == 1 && number.size() - at == 4 && at >= 1 && at <= 3 && number[0] != '0';
}

std::optional<double> amountOf(std::string_view number, bool threeMeansGroup)
{
    std::set<double> read;
    for (const NumberStyle style : styles) {
        const std::string plain = plainNumbers(number, style).text;
        if (const auto value = parseDouble(plain))
            read.insert(*value);
    }
    if (read.empty())
        return std::nullopt;
    if (read.size() == 1)
        return *read.begin();
    if (isThreeAfterOneMark(number) && threeMeansGroup)
        return *read.rbegin(); // the larger by a thousand
    return std::nullopt;
}

} // namespace

std::optional<CostAmount> readCost(std::string_view typed)
{
    std::string text = replaceAll(std::string(trim(typed)), "\u00a0", " ");
    text = replaceAll(replaceAll(text, "\u202f", " "), "\u2019", "'");
    const auto first = std::find_if(text.begin(), text.end(), isDigit);
    const auto last = std::find_if(text.rbegin(), text.rend(), isDigit).base();
    if (text.size() > longest || first == text.end())
        return std::nullopt;
    const std::string head(text.begin(), first);
    const std::string tail(last, text.end());
    const std::string_view before = trim(head);
    const std::string_view after = trim(tail);
    std::string number(first, last);
    if (number.find_first_not_of(numberLetters) != std::string::npos || (!before.empty() && !after.empty()))
        return std::nullopt;
    const auto currency = currencyOf(before.empty() ? after : before);
    if (!currency)
        return std::nullopt;
    number = replaceAll(number, "'", "\u2019"); // as plainNumbers knows the mark of Swiss numbers
    const bool threeMeansGroup = !currency->empty() && std::find(threeDecimals.begin(), threeDecimals.end(),
                                                                 *currency) == threeDecimals.end();
    const auto amount = amountOf(number, threeMeansGroup);
    if (!amount || !std::isfinite(*amount) || *amount < 0.0)
        return std::nullopt;
    return CostAmount{*currency, *amount};
}

Costs costsOf(const RigHistory &history, LocalTime now)
{
    Costs costs;
    std::map<std::string, std::map<int, CostYear>> sums;
    std::map<std::string, int> times;
    for (const Mend &mend : history.mends) {
        if (mend.at.instant > now.instant)
            continue;
        if (trim(mend.cost).empty()) {
            ++costs.withoutCost;
            continue;
        }
        const auto read = readCost(mend.cost);
        if (!read) {
            costs.unread.push_back(&mend);
            continue;
        }
        const int year = static_cast<int>(civilDate(mend.at).year());
        CostYear &sum = sums[read->currency][year];
        sum.year = year;
        sum.sum += read->amount;
        ++sum.mends;
        ++times[read->currency];
    }
    for (const auto &[currency, years] : sums) {
        CurrencyCosts one{currency, {}};
        for (int year = years.begin()->first; year <= years.rbegin()->first; ++year) {
            const auto found = years.find(year);
            one.years.push_back(found != years.end() ? found->second : CostYear{year, 0.0, 0});
        }
        costs.currencies.push_back(std::move(one));
    }
    std::stable_sort(costs.currencies.begin(), costs.currencies.end(),
                     [&](const CurrencyCosts &a, const CurrencyCosts &b) {
                         return times[a.currency] > times[b.currency];
                     });
    return costs;
}

} // namespace snugwalk
