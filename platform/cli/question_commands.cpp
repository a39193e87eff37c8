// SPDX-License-Identifier: Apache-2.0
// state and due: how the rig stands, and what comes next.
#include "base/text.hpp"
#include "cli/answers.hpp"
#include "cli/budget_answers.hpp"
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

Value concernJson(const OpenFinding &open)
{
    return Value::Map{{"finding", open.id.text()},
                      {"point", open.point},
                      {"status", slug(open.status)},
                      {"grade", open.grade},
                      {"call", slug(open.concern.call)},
                      {"forbids", open.concern.forbids},
                      {"concern", Value::Map{{"value", open.concern.number},
                                             {"low", open.concern.low},
                                             {"high", open.concern.high},
                                             {"unit", ""},
                                             {"basis", "common_practice"}}}};
}

Value stateJson(const Standing &standing)
{
    const RigState &s = standing.state;
    Value::List open;
    for (const OpenFinding &finding : s.open)
        open.push_back(concernJson(finding));
    Value::List holds;
    for (const StateHold &hold : s.holds)
        holds.push_back(
            Value::Map{{"rule", hold.hit.rule},
                       {"point", hold.hit.point},
                       {"place", hold.hit.place},
                       {"forbids", hold.hit.forbids},
                       {"finding", hold.finding.isNull() ? Value() : Value(hold.finding.text())}});
    Value::List unseen;
    for (const CouldNotLook &c : s.couldNotLook)
        unseen.push_back(Value::Map{{"point", c.point}, {"reason", c.reason}, {"holds", c.holds}});
    Value::List hidden;
    for (const HiddenInSight &h : s.hidden)
        hidden.push_back(Value::Map{{"point", h.point}, {"by", h.by.by}, {"date", formatDate(h.by.date)}});
    return Value::Map{{"open", open},
                      {"holds", holds},
                      {"hold", s.hold},
                      {"mend_soon", s.mendSoon},
                      {"watch", s.watch},
                      {"forbids", Value::List(s.forbids.begin(), s.forbids.end())},
                      {"looked_at", s.lookedAt},
                      {"looked_since", s.lookedSince ? Value(formatLocal(*s.lookedSince)) : Value()},
                      {"by", s.by},
                      {"could_not_look", unseen},
                      {"past_due", s.pastDue},
                      {"due_now", s.dueNow},
                      {"never_looked", s.neverLooked},
                      {"hidden", hidden}};
}

Result<Answer> state(Session &session)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    std::string text = now->history.rig.name + ": " + stateSentence(*now, session.texts()) + "\n";
    for (const OpenFinding &open : now->state.open) {
        const FindingHistory *h = findHistory(now->history, open.id);
        if (h != nullptr)
            text += padded(callWords(open.concern, session.texts()), 16) +
                    findingLine(session, now->history.rig, *h);
    }
    text += hiddenWords(session.catalogue(), now->history.rig, session.texts());
    for (const StateHold &hold : now->state.holds)
        text += "hold: " + session.texts().point(hold.hit.point).title + ": " +
                session.texts().word("holds", hold.hit.rule) + "\n";
    return Answer{stateJson(*now), text};
}

} // namespace

void addQuestionCommands(CLI::App &app, Registry &registry)
{
    registry.add(
        *app.add_subcommand("state", "how the rig stands: what was looked at, what is open, what it forbids"),
        "  snugwalk state", [](Session &s) { return state(s); });
    CLI::App *dueList = app.add_subcommand("due", "what is due, earliest first, and why");
    auto all = std::make_shared<bool>(false);
    dueList->add_flag("--all", *all, "also what is looked at each move");
    registry.add(*dueList, "  snugwalk due\n  snugwalk due --json --at 2027-03-01T08:00:00+13:00",
                 [all](Session &s) { return due(s, *all); });
}

} // namespace snugwalk::cli
