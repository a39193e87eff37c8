// SPDX-License-Identifier: Apache-2.0
// The question "what if?": places and roads to come, laid over what is usual, without writing anything.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/geo.hpp"
#include "due/aging/ahead.hpp"
#include "round/world.hpp"

namespace snugwalk {

/// A time at one place, with what is driven in it.
struct PlanLeg {
    CivilDate from{};
    CivilDate until{}; ///< the last day, at or after `from`
    GeoPoint place;
    bool covered = false; ///< under a roof when it stands
    Distance distance;    ///< driven in all, spread evenly over the days
    RoadClass road = RoadClass::Unknown;
    std::string name;
    friend bool operator==(const PlanLeg &, const PlanLeg &) = default;
};

/// The longest plan, from its first day to its last.
inline constexpr int planYearsAtMost = 10;

/// `{"legs": [{"from", "until", "lat", "lon", "covered", "distance", "road", "name"}]}`; the first four are
/// needed, `distance` is text with its unit. Sorted by date; legs may leave days between them, but share
/// none. \returns `InvalidInput` or `OutOfRange` with line and column, or with leg and member
[[nodiscard]] Result<std::vector<PlanLeg>> parsePlan(std::string_view json);

/// What the plan means for a rig from `now` on: on the days of a leg its place, cover and roads; on days
/// between them, and before the first, what is usual where the rig stands and as much driving as usual. Days
/// that are past are left out, with their share of the leg's distance.
[[nodiscard]] Ahead aheadOf(const std::vector<PlanLeg> &plan, const RigHistory &history, const World *world,
                            LocalTime now);

} // namespace snugwalk
