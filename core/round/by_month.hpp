// SPDX-License-Identifier: Apache-2.0
// The question "what did each month do to it?": its weather, and its roads.
#pragma once

#include <vector>

#include "due/aging/age_drivers.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

/// A calendar month, or the part of it from the first day of the log or up to today.
struct MonthOfWeather {
    CivilDate from{};
    CivilDate until{}; ///< the day after its last
    int days = 0;
    double aged = 0.0; ///< reference days
    double low = 0.0, high = 0.0;
    int recorded = 0; ///< of `days`, those with a weather record of their own
    int unknown = 0;  ///< of `days`, those that count as the reference for want of a place or of normals
};

/// Oldest first, without gaps, up to and without today; empty where nothing tells where the rig was.
/// Formula: the due clock of points with these weights (`AgeLine`), the road left out, from month to month
/// Tests:   tests/unit/round/tst_by_month.cpp; the months add up to what `AgeLine` has over all of them
/// \param ages what it is told for, such as the drivers of a roof seal
[[nodiscard]] std::vector<MonthOfWeather> weatherByMonth(const RigHistory &history, const AgeWeights &ages,
                                                         LocalTime now);

struct MonthOfRoad {
    CivilDate from{};
    CivilDate until{}; ///< the day after its last
    Distance driven;
    Distance equivalent; ///< of smooth road, see `TripShake`
    Distance low, high;
    int trips = 0; ///< that began in it
};

/// Oldest first, from the month of the first trip to that of `now`, months without a trip as well; empty
/// without one. A trip over a month's end counts by its share of time, by the clock on the wall.
/// Tests: tests/unit/round/tst_by_month.cpp; the months add up to the trips' own
[[nodiscard]] std::vector<MonthOfRoad> roadByMonth(const RigHistory &history, LocalTime now);

} // namespace snugwalk
