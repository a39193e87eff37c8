// SPDX-License-Identifier: Apache-2.0
// due: what comes next, by date or by concern, and why.
#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/due_answers.hpp"
#include "words/reason_words.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

std::string bandLine(const DueBand &band, const Texts &texts, UnitSystem units)
{
    std::vector<std::string> why;
    for (const Reason &reason : band.reasons)
        why.push_back(reasonWords(reason, texts, units));
    return padded(whenWords(band, texts), 22) + padded(texts.point(band.point).title, 36) + join(why, "; ") +
           "\n";
}

Result<Answer> due(Session &session, const DueFilter &filter)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    const auto bands = filtered(session, *now, filter);
    if (!bands)
        return bands.error();
    const std::vector<std::string> warnings = dueWarnings(session, *now);
    Value::List json;
    std::string text;
    if (session.globals().json) { // the decomposition is for programs here; people ask `due why`
        for (const DueEntry &entry : explained(session, *now, *bands))
            json.push_back(dueJson(entry, session.texts()));
    }
    for (const DueBand *band : *bands)
        text += bandLine(*band, session.texts(), session.units());
    if (text.empty())
        text = session.texts().phrase("due_none") + "\n";
    return Answer{Value::Map{{"due", json}, {"warnings", warningsJson(warnings)}},
                  text + warningLines(warnings, session.texts())};
}

} // namespace

void addDueCommands(CLI::App &app, Registry &registry)
{
    CLI::App *list =
        app.add_subcommand("due", "what is due, and why; jobs, calendar, why, whatif, fit, posterior below");
    list->require_subcommand(0, 1);
    auto filter = std::make_shared<DueFilter>();
    list->add_flag("--all", filter->all, "also what is looked at each move");
    list->add_option("--by", filter->order, "order: date (earliest first) or concern (most first)")
        ->check(CLI::IsMember({"date", "concern"}));
    list->add_option("--zone", filter->zone, "only this zone, such as roof");
    list->add_option("--within", filter->months, "only what may fall due within so many months")
        ->check(CLI::Range(1, 600));
    registry.add(*list,
                 "  snugwalk due\n  snugwalk due --by concern --zone roof --within 6\n"
                 "  snugwalk due --json --at 2027-03-01T08:00:00+13:00",
                 [filter](Session &s) { return due(s, *filter); });
    addDueJobCommands(*list, registry, filter);
    addDueWhyCommand(*list, registry);
    addDueWhatifCommand(*list, registry, filter);
    addDueFitCommands(*list, registry);
}

} // namespace snugwalk::cli
