// SPDX-License-Identifier: Apache-2.0
// Where an axis has its ticks: round numbers, and the beginnings of months and years.
#pragma once

#include <functional>
#include <vector>

#include "base/time.hpp"
#include "report/plot/plot.hpp"

namespace snugwalk {

/// 1, 2 or 5 times a power of ten, nearest by ratio to `span / wanted`; `span` above 0.
/// Source: [HECKBERT-1990] for the numbers; the bounds between them are their geometric means, as
///         d3-array has them (tests/reference/report)
[[nodiscard]] double niceStep(double span, int wanted);

/// Multiples of `niceStep` within `from` and `to`, about `wanted`. Each is the multiple itself, never a sum.
[[nodiscard]] std::vector<double> niceTicks(double from, double to, int wanted);

/// The range widened outwards to multiples of its step. Equal or reversed ends give a range of 1 around.
struct NiceRange {
    double from = 0.0, to = 1.0;
};
[[nodiscard]] NiceRange niceRange(double from, double to, int wanted);

/// Digits behind the point that multiples of `step` need: 2 for 0.05.
[[nodiscard]] int decimalsOf(double step);

/// Levels from fine to coarse of a number axis, told by `words`. With `from` and `to` its ends.
[[nodiscard]] std::vector<std::vector<PlotTick>>
numberLevels(double from, double to, const std::function<std::string(double, int decimals)> &words);

/// The same of a log axis whose ends are powers of ten: 1, 2 and 5 of each, each power, every second one.
[[nodiscard]] std::vector<std::vector<PlotTick>>
powerLevels(double from, double to, const std::function<std::string(double, int decimals)> &words);

/// "Mar" of a month alone, "2026" of a year, or both.
struct DateWords {
    std::function<std::string(CivilDate)> month;
    std::function<std::string(CivilDate)> monthOfYear;
};
/// Levels of a date axis: each month, quarter and half year by month with the year at the first and at each
/// January, then years, every second, fifth and tenth. Days since 1970-01-01.
[[nodiscard]] std::vector<std::vector<PlotTick>> dateLevels(double from, double to, const DateWords &words);

} // namespace snugwalk
