// SPDX-License-Identifier: Apache-2.0
// due: what comes next, and why.
#include "base/text.hpp"
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "words/reason_words.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {

namespace {

Value dateValue(const std::optional<CivilDate> &date) { return date ? Value(formatDate(*date)) : Value(); }

Value bandJson(const DueBand &band)
{
    Value::List reasons;
    for (const Reason &reason : band.reasons)
        reasons.push_back(reasonJson(reason));
    return Value::Map{{"point", band.point},
                      {"early", dateValue(band.early)},
                      {"likely", dateValue(band.likely)},
                      {"late", dateValue(band.late)},
                      {"at_distance", band.atDistance
                                          ? Value(Value::Map{{"value", band.atDistance->si()}, {"unit", "m"}})
                                          : Value()},
                      {"rule", band.rule},
                      {"basis", band.basis},
                      {"reasons", reasons},
                      {"due_now", band.dueNow},
                      {"past_due", band.pastDue},
                      {"ever_looked", band.everLooked},
                      {"last_look", dateValue(band.lastLook)}};
}

std::string bandLine(const DueBand &band, const Texts &texts, UnitSystem units)
{
    std::vector<std::string> why;
    for (const Reason &reason : band.reasons)
        why.push_back(reasonWords(reason, texts, units));
    return padded(whenWords(band, texts), 22) + padded(texts.point(band.point).title, 36) + join(why, "; ") +
           "\n";
}

Result<Answer> due(Session &session, bool all)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    Value::List json;
    std::string text;
    for (const DueBand &band : now->bands) {
        if (!all && !band.likely && band.rule != "never_looked")
            continue;
        json.push_back(bandJson(band));
        text += bandLine(band, session.texts(), session.units());
    }
    if (text.empty())
        text = "nothing has a date\n";
    return Answer{Value::Map{{"due", json}}, text};
}

} // namespace

void addQuestionCommands(CLI::App &app, Registry &registry)
{
    CLI::App *dueList = app.add_subcommand("due", "what is due, earliest first, and why");
    auto all = std::make_shared<bool>(false);
    dueList->add_flag("--all", *all, "also what is looked at each move");
    registry.add(*dueList, "  snugwalk due\n  snugwalk due --json --at 2027-03-01T08:00:00+13:00",
                 [all](Session &s) { return due(s, *all); });
}

} // namespace snugwalk::cli
