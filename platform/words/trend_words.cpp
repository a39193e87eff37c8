// SPDX-License-Identifier: Apache-2.0
// Sentences of a trend.
#include <cmath>

#include "base/text.hpp"
#include "words/compare_words.hpp"
#include "words/words.hpp"

namespace snugwalk {
namespace {

std::string dateOr(const std::optional<CivilDate> &date) { return date ? formatDate(*date) : "-"; }

std::string limitWords(const Trend &t, const Texts &texts, UnitSystem units)
{
    std::string out;
    if (t.lowSi)
        out += ", " + texts.phrase("limit_low", {formatFor(t.dimension, *t.lowSi, units)});
    if (t.highSi)
        out += ", " + texts.phrase("limit_high", {formatFor(t.dimension, *t.highSi, units)});
    return out.empty() ? out : out + " (" + texts.phrase("basis_" + t.basis) + ")";
}

std::string pointLine(const Trend &t, const TrendPoint &p, const Texts &texts, UnitSystem units)
{
    std::string line = "  " + formatLocalShort(p.at) + "  " + padded(formatFor(t.dimension, p.si, units), 10);
    if (p.driven)
        line += texts.phrase("driven_by_then", {format(*p.driven, units)});
    if (p.leftOut)
        line += "  " + texts.phrase("left_out");
    return line + "\n";
}

// Slopes keep their sign and are told in the reading's own unit.
std::string slopeWords(const Trend &t, double si, UnitSystem units)
{
    const std::string amount = formatFor(t.dimension, std::abs(si), units);
    return (si < 0.0 ? "-" : "+") + amount;
}

std::string distanceLine(const Trend &t, const Texts &texts, UnitSystem units)
{
    const DistanceTrend &by = *t.byDistance;
    const double per =
        units == UnitSystem::Si ? 1e6 : 1609344.0; // a thousand km or miles, common in the trade
    std::string out = "  " + texts.phrase(units == UnitSystem::Si ? "per_1000_km" : "per_1000_mi",
                                          {slopeWords(t, by.perMetreSi * per, units)});
    const auto amount = [&](const std::optional<Distance> &d) {
        return d ? format(*d, units) : std::string("-");
    };
    if (by.likely)
        out += "; " + texts.phrase("limit_after", {amount(by.early), amount(by.likely), amount(by.late)});
    return out + "\n";
}

} // namespace

std::string trendWords(const Trend &t, const Texts &texts, UnitSystem units)
{
    const std::string title = texts.point(t.point).title;
    const std::string reading = texts.word("readings", t.reading);
    std::string out = title + (reading == title ? "" : ", " + reading) +
                      (t.place.empty() ? "" : ", " + t.place) + limitWords(t, texts, units) + "\n";
    for (const TrendPoint &p : t.before)
        out += pointLine(t, p, texts, units);
    if (!t.before.empty())
        out += "  " + texts.phrase("replaced_here") + "\n";
    for (const TrendPoint &p : t.points)
        out += pointLine(t, p, texts, units);
    if (t.perYearSi)
        out += "  " + texts.phrase("per_year", {slopeWords(t, *t.perYearSi, units)}) + "\n";
    if (t.likely)
        out += "  " + texts.phrase("limit_on", {dateOr(t.early), dateOr(t.likely), dateOr(t.late)}) + "\n";
    else
        out += "  " + texts.phrase("trend_" + t.note) + "\n";
    return t.byDistance ? out + distanceLine(t, texts, units) : out;
}

} // namespace snugwalk
