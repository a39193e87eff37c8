// SPDX-License-Identifier: Apache-2.0
// The plots there are, each made from the answer to one question.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "due/trend/trend.hpp"
#include "report/csv_tables.hpp"
#include "report/plot/plot_voice.hpp"
#include "round/by_month.hpp"
#include "round/costs.hpp"
#include "round/states_then.hpp"

namespace snugwalk {

enum class PlotKind { Weathering, Shake, Cost, Concern, Reading };
/// weathering, shake, cost, concern, reading.
[[nodiscard]] std::string_view slug(PlotKind kind);
[[nodiscard]] std::optional<PlotKind> parsePlotKind(std::string_view slug);
[[nodiscard]] const std::vector<PlotKind> &allPlotKinds();
/// What people choose it by.
[[nodiscard]] std::string plotTitle(PlotKind kind, const Texts &texts);

/// The point whose drivers stand for weathering where none is asked for: a seal of the roof. Its slug.
inline constexpr std::string_view weatheredPoint = "roof-vent-sealant";
/// Walks back that concern is worked out for again.
inline constexpr std::size_t mostWalksBack = 30;

/// Bars of reference days over the days of the calendar, a month each, with the range of each.
[[nodiscard]] Plot weatheringPlot(const std::vector<MonthOfWeather> &months, const std::string &pointTitle,
                                  const PlotVoice &voice);
/// Kilometres or miles a month on a log axis: a dot driven, a ring the same as smooth road, with its range.
/// Roads differ by factors of hundreds, so bars would show the worst month alone.
[[nodiscard]] Plot shakePlot(const std::vector<MonthOfRoad> &months, const PlotVoice &voice);
/// One plot a currency, for sums of different ones are none; one that is empty where nothing can be read.
/// What is written and could not be read is named in the notes of the first.
[[nodiscard]] std::vector<Plot> costPlots(const Costs &costs, const PlotVoice &voice);
/// Steps from walk to walk, each told by the shape of its call. \param what a point's or a finding's title;
/// empty: the rig's worst
[[nodiscard]] Plot concernPlot(const std::vector<ConcernThen> &concerns, const std::string &what,
                               const PlotVoice &voice);
/// Readings against their limits, and where the line is likely to meet one. In the unit read last.
[[nodiscard]] Plot readingPlot(const Trend &trend, CivilDate today, const PlotVoice &voice);
/// One that tells what brings readings.
[[nodiscard]] Plot noReadingPlot(const PlotVoice &voice);

/// The numbers behind it, named in English, dates by ISO 8601.
[[nodiscard]] CsvTable plotTable(const Plot &plot);

/// A row as one sentence, for who moves along a plot: "March 2026: days 31, aged like 41, range 30 to 55".
[[nodiscard]] std::string rowWords(const Plot &plot, const PlotRow &row);

} // namespace snugwalk
