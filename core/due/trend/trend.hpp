// SPDX-License-Identifier: Apache-2.0
// A reading over all walks, and when it meets its limit.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

struct TrendPoint {
    LocalTime at;
    double si = 0.0;
    std::string unit; ///< as read
    Id walk;
    std::optional<Distance> driven = std::nullopt; ///< by then, where trips are logged
    bool leftOut = false; ///< lies far from the line that all others make, and is not the last
    friend bool operator==(const TrendPoint &, const TrendPoint &) = default;
};

/// The same line against distance driven instead of days. Distances count from `now`.
struct DistanceTrend {
    double perMetreSi = 0.0;
    std::optional<Distance> early;
    std::optional<Distance> likely;
    std::optional<Distance> late;
    std::string note; ///< as of `Trend`
    friend bool operator==(const DistanceTrend &, const DistanceTrend &) = default;
};

/// One reading at one place of a point.
struct Trend {
    std::string point;
    std::string reading;
    std::string place;
    Dimension dimension = Dimension::Count;
    std::vector<TrendPoint> points; ///< since the last replacement, oldest first
    std::vector<TrendPoint> before; ///< of what was replaced
    std::optional<double> lowSi;
    std::optional<double> highSi;
    std::string basis;               ///< of the limits: maker, published, common_practice
    std::optional<double> perYearSi; ///< slope of the line; nothing under three readings
    std::optional<CivilDate> early;  ///< the line has met the limit by then in 1 case of 10
    std::optional<CivilDate> likely;
    std::optional<CivilDate> late; ///< in 9 of 10
    /// Why there is no date, or what to ask: no_limit, too_few, past_limit, not_toward_limit,
    /// not_determined, far_off, ask; empty when there are dates.
    std::string note;
    std::optional<DistanceTrend> byDistance; ///< where trips are logged between the readings
    friend bool operator==(const Trend &, const Trend &) = default;
};

/// Every reading and place of `point` that was read by `now`, by reading and place.
///
/// A replacement (see series.hpp) starts a new series. A wear reading that grew back beyond three
/// standard uncertainties without one is a question (`ask`), and has no dates until it is answered.
/// The line is least squares; its noise is never taken as less than what such a reading is read to.
/// Dates are Fieller's set at 80 %: none under three readings, none where the slope could as well be
/// flat, none more than thirty years ahead. One reading far off the line is left out and marked.
/// Formula: methods of due/trend/condition.hpp
/// Tests:   tests/unit/compare
[[nodiscard]] std::vector<Trend> trendsOf(const Catalogue &catalogue, const RigHistory &history,
                                          const std::string &point, LocalTime now);

} // namespace snugwalk
