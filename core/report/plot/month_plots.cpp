// SPDX-License-Identifier: Apache-2.0
// Weathering and shake, a bar a month.
#include <algorithm>

#include "report/plot/plots.hpp"

namespace snugwalk {
namespace {

constexpr double beside = 4.0;     ///< days
constexpr double halfMonth = 15.2; // ticks stand under the middle of their month

template <typename Months>
void setMonths(Plot &plot, const Months &months, const PlotVoice &voice)
{
    const CivilDate first = months.front().from;
    plot.across = voice.dateAxis(plotDay(first.year() / first.month() / 1), plotDay(months.back().until));
    plot.across.shift = halfMonth;
    // the middle of a month that has only begun would lie outside
    for (std::vector<PlotTick> &level : plot.across.levels)
        std::erase_if(level, [&](const PlotTick &tick) { return tick.at + halfMonth > plot.across.to; });
}

double wholeMonthEnd(CivilDate from) { return plotDay(addMonths(from.year() / from.month() / 1, 1)); }

} // namespace

Plot weatheringPlot(const std::vector<MonthOfWeather> &months, const std::string &pointTitle,
                    const PlotVoice &voice)
{
    Plot plot;
    plot.slug = "weathering";
    plot.title = plotTitle(PlotKind::Weathering, voice.texts);
    plot.head = {voice.say("col_month"), voice.say("col_days"), voice.say("col_aged"), voice.say("col_range"),
                 voice.say("col_recorded")};
    plot.dataHead = {"month",         "from",           "until",         "days",        "aged_days",
                     "aged_low_days", "aged_high_days", "recorded_days", "unknown_days"};
    if (months.empty()) {
        plot.empty = voice.say("empty_weathering");
        return plot;
    }
    PlotBars bars{voice.say("aged_bars"), PlotFill::Hatch, {}};
    PlotLine calendar{voice.say("calendar"), {}, PlotStroke::Solid, false};
    double most = 0.0;
    double aged = 0.0;
    int days = 0;
    int unknown = 0;
    for (const MonthOfWeather &m : months) {
        const double from = plotDay(m.from);
        const double until = plotDay(m.until);
        bars.bars.push_back({from, until, m.aged, m.low, m.high});
        calendar.spots.push_back({from, static_cast<double>(m.days)});
        calendar.spots.push_back({until, static_cast<double>(m.days)});
        most = std::max({most, m.high, static_cast<double>(m.days)});
        aged += m.aged;
        days += m.days;
        unknown += m.unknown;
        plot.rows.push_back({(from + until) / 2.0,
                             {voice.month(m.from), voice.number(m.days, 0), voice.number(m.aged, 0),
                              voice.range(m.low, m.high, 0), voice.number(m.recorded, 0)},
                             {formatDate(m.from).substr(0, 7), formatDate(m.from), formatDate(m.until),
                              std::to_string(m.days), plotData(m.aged), plotData(m.low), plotData(m.high),
                              std::to_string(m.recorded), std::to_string(m.unknown)}});
    }
    plot.up = voice.numberAxis(voice.say("weathering_up"), 0.0, most);
    setMonths(plot, months, voice);
    plot.bars.push_back(std::move(bars));
    plot.lines.push_back(std::move(calendar));
    plot.about = voice.say("weathering_about", {pointTitle, voice.number(days, 0), voice.number(aged, 0)});
    plot.notes.push_back(voice.say("weathering_note"));
    if (unknown > 0)
        plot.notes.push_back(voice.say("weathering_unknown", {voice.number(unknown, 0)}));
    return plot;
}

Plot shakePlot(const std::vector<MonthOfRoad> &months, const PlotVoice &voice)
{
    Plot plot;
    plot.slug = "shake";
    plot.title = plotTitle(PlotKind::Shake, voice.texts);
    const Unit unit = displayUnit(Dimension::Distance, voice.units, 1e6);
    const std::string symbol(unit.symbol);
    plot.head = {voice.say("col_month"), voice.say("col_driven", {symbol}), voice.say("col_shaken", {symbol}),
                 voice.say("col_range"), voice.say("col_trips")};
    plot.dataHead = {"month", "driven_m", "smooth_road_m", "smooth_road_low_m", "smooth_road_high_m",
                     "trips"};
    if (months.empty()) {
        plot.empty = voice.say("empty_shake");
        return plot;
    }
    PlotLine driven{voice.say("driven"), {}, PlotStroke::Solid, true, false};
    PlotLine shaken{voice.say("shaken"), {}, PlotStroke::Solid, true, false};
    double least = 1e300;
    double most = 0.0;
    Distance way;
    Distance shook;
    for (const MonthOfRoad &m : months) {
        const double from = plotDay(m.from);
        const double middle = (from + wholeMonthEnd(m.from)) / 2.0;
        const auto shown = [&](Distance d) { return fromSi(unit, d.si()); };
        if (m.driven > Distance()) { // both in their month, one beside the other
            driven.spots.push_back({middle - beside, shown(m.driven), PlotShape::Dot});
            shaken.spots.push_back(
                {middle + beside, shown(m.equivalent), PlotShape::Ring, shown(m.low), shown(m.high)});
            least = std::min({least, shown(m.driven), shown(m.low)});
            most = std::max({most, shown(m.driven), shown(m.high)});
        }
        way = way + m.driven;
        shook = shook + m.equivalent;
        plot.rows.push_back(
            {middle,
             {voice.month(m.from), voice.number(shown(m.driven), 0), voice.roughly(shown(m.equivalent)),
              m.high > m.low ? voice.say("range", {voice.roughly(shown(m.low)), voice.roughly(shown(m.high))})
                             : std::string(),
              voice.number(m.trips, 0)},
             {formatDate(m.from).substr(0, 7), plotData(m.driven.si()), plotData(m.equivalent.si()),
              plotData(m.low.si()), plotData(m.high.si()), std::to_string(m.trips)}});
    }
    if (!(most > 0.0)) { // of the months kept none has a trip
        least = 1.0;
        most = 10.0;
    }
    plot.up = voice.powerAxis(voice.say("shake_up", {symbol}), std::max(least, 0.1), most);
    setMonths(plot, months, voice);
    plot.lines = {std::move(shaken), std::move(driven)};
    plot.about = voice.say("shake_about", {voice.number(fromSi(unit, way.si()), 0) + "\u00a0" + symbol,
                                           voice.roughly(fromSi(unit, shook.si())) + "\u00a0" + symbol});
    plot.notes.push_back(voice.say("shake_note"));
    return plot;
}

} // namespace snugwalk
