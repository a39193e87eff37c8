// SPDX-License-Identifier: Apache-2.0
// What is planned: places to come and distances to drive, laid over what is usual.
#pragma once

#include <vector>

#include "base/time.hpp"
#include "base/units.hpp"
#include "weather/weathering.hpp"

namespace snugwalk {

/// A drive of the plan; its distance is spread evenly over its days.
struct PlannedDrive {
    CivilDate from{};
    CivilDate until{}; ///< the last day, at or after `from`
    Distance distance;
    Distance equivalent;      ///< the same in smooth-road distance
    double consumption = 1.0; ///< by which it uses up a distance interval, see `TripShake`
    double least = 1.0;       ///< the low end of `equivalent`, over it
    double most = 1.0;        ///< the high end of `equivalent`, over it
};

/// Empty: all goes on as usual. While the plan lasts it replaces the usual: no other driving is expected
/// up to `until`.
struct Ahead {
    CivilDate from{};
    std::vector<DayRates> days; ///< weather of each day of the plan from `from` on
    std::vector<PlannedDrive> drives;
    [[nodiscard]] bool isEmpty() const { return days.empty(); }
};

} // namespace snugwalk
