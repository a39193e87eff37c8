// SPDX-License-Identifier: Apache-2.0
// A concern's figures in the order in which they were worked out.
#include "words/why_words.hpp"

#include <array>
#include <cmath>

#include "base/text.hpp"
#include "concern/matrix.hpp"
#include "due/history_index.hpp"
#include "words/rule_words.hpp"
#include "words/state_words.hpp"

namespace snugwalk {
namespace {

std::string plain(double value) { return formatFor(Dimension::Count, value, UnitSystem::Si); }
std::string oneDigit(double value) { return fixed(value, 1); }

std::string percent(double share)
{
    const double hundred = 100.0 * share;
    return fixed(hundred, hundred >= 10.0 ? 0 : hundred >= 1.0 ? 1 : 2) + " %";
}

/// What all lines of one concern are made from.
struct Why {
    const Standing &standing;
    const Catalogue &catalogue;
    const Texts &texts;
    std::vector<WhyLine> lines;

    WhyLine &add(std::string figure, const std::string &phrase, const std::vector<std::string> &arguments,
                 std::string basis, const std::vector<std::string> &sources = {})
    {
        lines.push_back({std::move(figure),
                         texts.phrase(phrase, arguments),
                         {},
                         {},
                         {},
                         {},
                         std::move(basis),
                         fullSources(sources, catalogue)});
        return lines.back();
    }
};

const std::vector<std::string> common = {"CP"};

void tellConsequence(Why &why, const Point &point)
{
    const double c = consequenceOf(point);
    const std::string letter = point.consequence.empty() ? "C" : point.consequence.front();
    const bool listed = isOnHoldList(point);
    why.add("consequence", listed ? "why_consequence_hold" : "why_consequence",
            {plain(c), why.texts.phrase("consequence_" + letter)}, "common_practice", common)
        .value = c;
}

void tellChance(Why &why, ChanceRange chance, const std::string &basis)
{
    const std::vector<std::string> sources = basis == "common_practice" ? common : std::vector<std::string>();
    WhyLine &line =
        why.add("chance", "why_chance", {percent(chance.value), percent(chance.low), percent(chance.high)},
                basis, sources);
    line.value = chance.value;
    line.low = chance.low;
    line.high = chance.high;
}

void tellNumber(Why &why, double risk, double number, double low, double high)
{
    why.add("risk", "why_risk", {fixed(risk, risk >= 0.1 ? 2 : 4)}, "computed").value = risk;
    WhyLine &line =
        why.add("concern", "why_number", {oneDigit(number), oneDigit(low), oneDigit(high)}, "computed");
    line.value = number;
    line.low = low;
    line.high = high;
}

void tellMatrix(Why &why, Severity severity, double chance)
{
    constexpr std::array<const char *, 4> roman = {"I", "II", "III", "IV"};
    const ProbabilityBand band = probabilityBand(chance);
    std::string letter(slug(band));
    letter.front() = static_cast<char>(letter.front() - 'a' + 'A');
    why.add("matrix", "why_matrix",
            {roman[static_cast<std::size_t>(severity)], letter,
             why.texts.phrase("matrix_" + std::string(slug(matrixLevel(severity, band))))},
            "published", {"882E"});
}

void tellCall(Why &why, const Point &point, const Concern &c)
{
    for (const HoldHit &hit : c.holds) {
        const HoldRule *rule = why.catalogue.holds().find(hit.rule);
        why.add("hold", "why_hold", {hit.rule, why.texts.word("holds", hit.rule)},
                rule != nullptr && rule->sources.front() != "CP" ? "published" : "common_practice",
                rule != nullptr ? rule->sources : common);
    }
    if (c.call == Call::Watch)
        why.add("call", "why_watch", {}, "common_practice", common);
    if (c.call != Call::MendSoon)
        return;
    const bool floor = isAtLeastMendSoon(severityOf(point), c.chance);
    why.add("call", c.number >= 50.0 || !floor ? "why_mend_soon_number" : "why_mend_soon_floor", {},
            "common_practice", common);
}

void tellMonths(Why &why, const std::string &phrase, double months)
{
    WhyLine &line = why.add("months_ahead", phrase, {oneDigit(months)}, "computed");
    line.value = months;
    line.unit = "month";
}

void tellLooks(Why &why, const PointConcern &p, const Point &point)
{
    const std::string failed = percent(failedAtInterval(p.severity));
    const std::vector<std::string> arguments =
        p.byMoves ? std::vector{failed} : std::vector{oneDigit(p.nominal), failed};
    WhyLine &interval = why.add("interval", p.byMoves ? "why_interval_move" : "why_interval", arguments,
                                point.sourceTag == "P" ? "published" : "common_practice", point.sourceKeys);
    interval.value = p.nominal;
    interval.unit = p.byMoves ? "move" : "month";
    if (!p.looked) {
        why.add("looked", "why_never", {}, "prior");
        return;
    }
    const HistoryIndex index(why.standing.history, why.standing.now);
    const Mark &look = *index.of(p.point).lastLook();
    why.add("looked", "why_looked",
            {formatLocalShort(look.at), why.texts.phrase("how_" + std::string(slug(look.how)))},
            "common_practice", {"CP", "POD"})
        .value = sensitivityOf(look.how);
    if (p.ofFindings)
        return;
    why.add("missed", p.passes == 1 ? "why_passes_1" : "why_passes_n",
            {std::to_string(p.passes), percent(p.missed)}, "fitted")
        .value = p.missed;
}

Point knownPoint(const Catalogue &catalogue, const std::string &slug)
{
    if (const Point *point = catalogue.find(slug))
        return *point;
    Point point;
    point.slug = slug;
    return point;
}

} // namespace

std::vector<WhyLine> whyOfFinding(const Standing &standing, const Catalogue &catalogue,
                                  const OpenFinding &finding, const Texts &texts)
{
    Why why{standing, catalogue, texts, {}};
    const Point point = knownPoint(catalogue, finding.point);
    const Concern &c = finding.concern;
    tellConsequence(why, point);
    if (c.waitsForConfirm)
        why.add("grade", "why_mended", {}, "common_practice", common);
    else
        why.add("grade", "why_grade",
                {std::to_string(c.grade), texts.grade(point.slug, c.grade), plain(monthsToFailure(c.grade))},
                "common_practice", common)
            .value = c.grade;
    tellMonths(why, "why_ahead", c.monthsAhead);
    tellChance(why, {c.chance, c.chanceLow, c.chanceHigh}, "common_practice");
    tellNumber(why, c.risk, c.number, c.low, c.high);
    tellMatrix(why, severityOf(point), c.chance);
    tellCall(why, point, c);
    return why.lines;
}

std::vector<WhyLine> whyOfPoint(const Standing &standing, const Catalogue &catalogue, const PointConcern &p,
                                const Texts &texts)
{
    Why why{standing, catalogue, texts, {}};
    const Point point = knownPoint(catalogue, p.point);
    tellConsequence(why, point);
    tellLooks(why, p, point);
    if (p.ofFindings)
        why.add("findings", "why_findings", {}, "computed");
    if (p.byMoves && !p.ofFindings)
        why.add("months_ahead", "why_ahead_move", {}, "computed");
    else
        tellMonths(why, p.ofFindings ? "why_ahead" : "why_ahead_now", p.monthsAhead);
    tellChance(why, p.chance, p.basis);
    why.add("unlooked", "why_unlooked", {percent(p.unlooked)}, "prior").value = p.unlooked;
    tellNumber(why, p.risk, p.number, p.low, p.high);
    tellMatrix(why, p.severity, p.chance.value);
    if (!p.ofFindings)
        why.add("call", "why_no_call", {}, "computed");
    why.add("weight", "why_weight", {fixed(p.weight(), 2), texts.phrase(p.current ? "yes_word" : "no_word")},
            "computed")
        .value = p.weight();
    return why.lines;
}

std::string basisWords(const WhyLine &line, const Texts &texts)
{
    if (line.basis == "computed")
        return {};
    const std::string source = line.sources.empty() ? "-" : join(line.sources, "; ");
    return texts.phrase("basis_line", {texts.phrase("basis_" + line.basis), source});
}

} // namespace snugwalk
