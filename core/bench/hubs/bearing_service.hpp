// SPDX-License-Identifier: Apache-2.0
// When greased bearings are due: months and distance side by side.
#pragma once

#include <optional>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"
#include "base/time.hpp"

namespace snugwalk {

struct BearingClock {
    CivilDate served{};
    CivilDate today{};
    std::optional<Distance> driven = {};        ///< since then; unknown is not zero
    bool underWater = false;                    ///< a hub was under water since
    std::optional<int> makerMonths = {};        ///< the axle maker's figure wins
    std::optional<Distance> makerDistance = {}; ///< likewise
};

struct BearingDue {
    Estimate share; ///< of the interval that is used up, 1 is due; the larger of time and distance
    Estimate time;  ///< s that are left, below 0 when it is past
    std::optional<Estimate> distance; ///< m that are left
    CivilDate dueBy{};                ///< by months alone
    bool distanceFirst = false;
};

/// 12 months or 6,000 to 8,000 miles, whichever comes first; half the months once a hub was under water.
///
/// \returns warnings `service_due`, `under_water`, `distance_unknown`; `InvalidInput` naming "served" when
///          that is after today or no date, `OutOfRange` for a distance below 0 or over 1,000,000 km, or a
///          maker's figure outside 1 to 120 months and 100 to 1,000,000 km.
/// Source:   common practice; the figure of the stricter end counts, the other is the range
/// Tests:    tests/published/bench/hubs/tst_bearings.cpp
[[nodiscard]] Result<BearingDue> bearingDue(const BearingClock &clock);

} // namespace snugwalk
