// SPDX-License-Identifier: Apache-2.0
// state: how the rig stands, and concern why: each figure of it opened.
#include <cmath>

#include "base/text.hpp"
#include "cli/answers.hpp"
#include "cli/budget_answers.hpp"
#include "cli/commands.hpp"
#include "concern/matrix.hpp"
#include "data/embedded.hpp"
#include "walk/walk_value.hpp"
#include "words/reason_words.hpp"
#include "words/rule_words.hpp"
#include "words/state_words.hpp"
#include "words/why_words.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

Value rangeJson(double value, double low, double high, const std::string &basis)
{
    return Value::Map{{"value", value}, {"low", low}, {"high", high}, {"unit", ""}, {"basis", basis}};
}

Value rangeJson(const ChanceRange &range, const std::string &basis)
{
    return rangeJson(range.value, range.low, range.high, basis);
}

Value monthsJson(double months) { return Value::Map{{"value", months}, {"unit", "month"}}; }

Value idOrNull(const Id &id) { return id.isNull() ? Value() : Value(id.text()); }

Value findingConcern(const OpenFinding &open)
{
    const Concern &c = open.concern;
    return Value::Map{{"finding", open.id.text()},
                      {"point", open.point},
                      {"defect", open.defect},
                      {"status", slug(open.status)},
                      {"grade", open.grade},
                      {"call", slug(c.call)},
                      {"forbids", c.forbids},
                      {"due", open.due ? Value(formatDate(*open.due)) : Value()},
                      {"tied_with_first", open.tiedWithFirst},
                      {"concern", rangeJson(c.number, c.low, c.high, "common_practice")},
                      {"risk", Value::Map{{"value", c.risk}, {"unit", ""}}},
                      {"chance", rangeJson(c.chance, c.chanceLow, c.chanceHigh, "common_practice")},
                      {"months_ahead", monthsJson(c.monthsAhead)}};
}

Value pointConcern(const PointConcern &p)
{
    const ProbabilityBand band = probabilityBand(p.chance.value);
    return Value::Map{{"point", p.point},
                      {"severity", static_cast<int>(p.severity) + 1},
                      {"consequence", p.consequence},
                      {"concern", rangeJson(p.number, p.low, p.high, p.basis)},
                      {"risk", Value::Map{{"value", p.risk}, {"unit", ""}}},
                      {"chance", rangeJson(p.chance, p.basis)},
                      {"chance_unlooked", p.unlooked},
                      {"chance_missed", p.missed},
                      {"months_ahead", monthsJson(p.monthsAhead)},
                      {"interval", Value::Map{{"value", p.nominal}, {"unit", p.byMoves ? "move" : "month"}}},
                      {"passes", p.passes},
                      {"looked", p.looked},
                      {"look_counts", p.current},
                      {"of_findings", p.ofFindings},
                      {"tied_with_first", p.tiedWithFirst},
                      {"matrix", slug(matrixLevel(p.severity, band))},
                      {"weight", p.weight()}};
}

Value holdJson(const StateHold &hold)
{
    Value accepted;
    if (hold.accepted) {
        accepted = toValue(*hold.accepted);
        accepted.member("id") = hold.accepted->id.text();
    }
    Value reading;
    if (hold.hit.si)
        reading = Value::Map{{"value", *hold.hit.si}, {"unit", siSymbol(hold.hit.dimension)}};
    return Value::Map{{"rule", hold.hit.rule},
                      {"point", hold.hit.point},
                      {"place", hold.hit.place},
                      {"forbids", hold.hit.forbids},
                      {"finding", idOrNull(hold.finding)},
                      {"reading", reading},
                      {"acceptable", hold.acceptable},
                      {"accepted", accepted}};
}

Value worstJson(const std::optional<WorstItem> &worst)
{
    if (!worst)
        return {};
    return Value::Map{{"finding", idOrNull(worst->finding)},
                      {"point", worst->point},
                      {"call", slug(worst->call)},
                      {"concern", rangeJson(worst->number, worst->low, worst->high, "common_practice")},
                      {"tied", worst->tied}};
}

template <typename List, typename Json>
Value listJson(const List &list, Json json)
{
    Value::List out;
    for (const auto &item : list)
        out.push_back(json(item));
    return out;
}

Value missedJson(const CouldNotLook &c)
{
    return Value::Map{{"point", c.point}, {"reason", c.reason}, {"holds", c.holds}};
}

Value hiddenJson(const HiddenInSight &h)
{
    return Value::Map{{"point", h.point}, {"by", h.by.by}, {"date", formatDate(h.by.date)}};
}

Value stateJson(const Standing &standing)
{
    const RigState &s = standing.state;
    return Value::Map{{"open", listJson(s.open, findingConcern)},
                      {"points", listJson(s.points, pointConcern)},
                      {"worst", worstJson(s.worst)},
                      {"serious_chance", rangeJson(s.outlook.serious, "prior")},
                      {"serious_items", s.outlook.seriousItems},
                      {"serious_expected", rangeJson(s.outlook.expected, "prior")},
                      {"expected_loss", rangeJson(s.outlook.loss, "prior")},
                      {"looked_share", s.outlook.looked},
                      {"weight", s.outlook.weight},
                      {"holds", listJson(s.holds, holdJson)},
                      {"hold", s.hold},
                      {"accepted", s.accepted},
                      {"mend_soon", s.mendSoon},
                      {"watch", s.watch},
                      {"forbids", Value::List(s.forbids.begin(), s.forbids.end())},
                      {"walk", idOrNull(s.walk)},
                      {"looked_at", s.lookedAt},
                      {"looked_since", s.lookedSince ? Value(formatLocal(*s.lookedSince)) : Value()},
                      {"by", s.by},
                      {"could_not_look", listJson(s.couldNotLook, missedJson)},
                      {"past_due", s.pastDue},
                      {"due_now", s.dueNow},
                      {"never_looked", s.neverLooked},
                      {"hidden", listJson(s.hidden, hiddenJson)}};
}

std::string number(double value) { return std::to_string(std::lround(value)); }

std::string worstLine(const RigState &s, const Texts &texts)
{
    if (!s.worst)
        return {};
    const WorstItem &w = *s.worst;
    std::string out = texts.phrase(
        "worst_item", {texts.point(w.point).title, number(w.number), number(w.low), number(w.high)});
    if (w.tied > 0)
        out += " " + texts.phrase(w.tied == 1 ? "worst_tied_1" : "worst_tied_n", {std::to_string(w.tied)});
    return out + "\n";
}

Result<Answer> state(Session &session)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    const Texts &texts = session.texts();
    const RigState &s = now->state;
    std::string text = now->history.rig.name + ": " + stateSentence(*now, texts) + "\n" + worstLine(s, texts);
    if (s.outlook.weight > 0.0)
        text += texts.phrase("loss_expected", {fixed(s.outlook.loss.value, 1), fixed(s.outlook.loss.low, 1),
                                               fixed(s.outlook.loss.high, 1)}) +
                "\n";
    for (const OpenFinding &open : s.open) {
        const FindingHistory *h = findHistory(now->history, open.id);
        if (h == nullptr)
            continue;
        const bool tied = open.tiedWithFirst && &open != &s.open.front();
        text += padded(callWords(open.concern, texts) + (tied ? ", " + texts.phrase("tied_word") : ""), 16) +
                findingLine(session, now->history.rig, *h);
    }
    text += hiddenWords(session.catalogue(), now->history.rig, texts);
    for (const StateHold &hold : s.holds)
        text += texts.phrase("hold_word") + ": " + holdWords(hold, texts) + "\n";
    return Answer{stateJson(*now), text};
}

Value whyJson(const WhyLine &line)
{
    return Value::Map{
        {"figure", line.figure}, {"text", line.text},
        {"value", line.value},   {"low", line.low},
        {"high", line.high},     {"unit", line.unit},
        {"basis", line.basis},   {"sources", Value::List(line.sources.begin(), line.sources.end())}};
}

Answer whyAnswer(const std::string &title, const std::vector<WhyLine> &lines, const Texts &texts)
{
    std::string text = title + "\n";
    for (const WhyLine &line : lines) {
        const std::string basis = basisWords(line, texts);
        text += "  " + line.text + "\n" + (basis.empty() ? "" : "      " + basis + "\n");
    }
    return {Value::Map{{"title", title}, {"why", listJson(lines, whyJson)}}, text};
}

Result<Answer> why(Session &session, const std::string &typed)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    const Texts &texts = session.texts();
    const Catalogue &catalogue = session.catalogue();
    for (const PointConcern &p : now->state.points) {
        if (p.point == typed)
            return whyAnswer(texts.point(p.point).title, whyOfPoint(*now, catalogue, p, texts), texts);
    }
    if (catalogue.find(typed) != nullptr)
        return Error{Errc::NotFound, "this rig has no such point, or nothing makes it due", typed,
                     "see `snugwalk points`"};
    const Result<Id> id = idOf(**session.book(), "finding", typed);
    if (!id)
        return id.error();
    for (const OpenFinding &open : now->state.open) {
        if (open.id == *id)
            return whyAnswer(texts.point(open.point).title + ", " + id->shortText(),
                             whyOfFinding(*now, catalogue, open, texts), texts);
    }
    return Error{Errc::NotFound, "this finding is gone, or mended and confirmed: no concern is left",
                 id->shortText(), "see `snugwalk finding show " + id->shortText() + "`"};
}

} // namespace

void addStateCommands(CLI::App &app, Registry &registry)
{
    registry.add(
        *app.add_subcommand("state", "how the rig stands: what was looked at, what is open, what it forbids"),
        "  snugwalk state\n  snugwalk state --json", [](Session &s) { return state(s); });
    CLI::App *concern = app.add_subcommand("concern", "how much harm is expected before the next look");
    concern->require_subcommand(1);
    CLI::App *opening = concern->add_subcommand("why", "every figure of a concern in words, with its source");
    auto of = std::make_shared<std::string>();
    opening->add_option("of", *of, "id of a finding, or a point")->required();
    registry.add(*opening, "  snugwalk concern why 3f2a90bc\n  snugwalk concern why roof-vent-sealant --json",
                 [of](Session &s) { return why(s, *of); });
}

} // namespace snugwalk::cli
