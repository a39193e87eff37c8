// SPDX-License-Identifier: Apache-2.0
// How far the rig has gone, and how far it will likely go.
#pragma once

#include <array>
#include <optional>

#include "due/first_passage.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

/// Distance of the trips between two moments; a trip under way at either counts by its share of time.
[[nodiscard]] Distance distanceBetween(const RigHistory &history, Instant from, Instant to);
[[nodiscard]] Distance distanceSince(const RigHistory &history, Instant since);

/// When the distance driven since `since` reached `wanted`, or nothing when it had not by `now`.
[[nodiscard]] std::optional<LocalTime> reachedAt(const RigHistory &history, Instant since, Distance wanted,
                                                 LocalTime now);

enum class UsageLevel {
    Season,  ///< 12 months of log or more: the owner's own seasons
    Trips,   ///< 3 trips or more
    Stated,  ///< the distance a year that the owner gave
    Default, ///< nothing known: 10,000 km a year
    Standing ///< the owner says it does not move: no distance ever
};
[[nodiscard]] std::string_view slug(UsageLevel level);

/// Driving to come. `shares` says how a year's distance falls on the calendar months.
struct UsageForecast {
    UsageLevel level = UsageLevel::Default;
    double months = 0.0; ///< length of the log
    int trips = 0;
    Distance yearly; ///< expected a year
    std::array<double, 12> shares{};
    LognormalRate rate; ///< metres a day; not used at level Trips
    LumpyRate lumps;    ///< metres a day; level Trips only
    Distance overshoot; ///< by which a trip passes a limit on average; level Trips only
};

/// Three levels. Twelve months of log: monthly shares shrunk to even ones by the weight
/// 6 / (6 + months), rate lognormal with the spread that the trips themselves show. Three trips:
/// compound Poisson with the overshoot correction (mean square / twice the mean). Else the stated
/// or a common distance a year, known within a factor of 2 either way (10 % to 90 %).
/// Shares and thresholds are common practice, no source.
[[nodiscard]] UsageForecast forecastUsage(const RigHistory &history, LocalTime now);

/// Days from `from` after which `left` has been driven with probability `p`; nothing when it takes
/// over a hundred years or never happens.
[[nodiscard]] std::optional<double> daysToDrive(const UsageForecast &forecast, Distance left, CivilDate from,
                                                double p);

} // namespace snugwalk
