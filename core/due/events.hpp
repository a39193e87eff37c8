// SPDX-License-Identifier: Apache-2.0
// Happenings that make a point due at once, and the ladder of looks after a wheel was fitted.
#pragma once

#include <optional>

#include "catalogue/catalogue.hpp"
#include "due/clock.hpp"

namespace snugwalk {

/// True when `event` makes `point` due, by the catalogue's list or by the point's own uses.
[[nodiscard]] bool makesDue(const Catalogue &catalogue, std::string_view event, const Point &point);

/// The earliest happening that `point` has not been looked at since; wheels fitted are left to the
/// ladder. Looks and work at the very moment count as before it.
[[nodiscard]] const Happening *unanswered(const Catalogue &catalogue, const RigHistory &history,
                                          const Point &point, const PointClock &clock, LocalTime now);

/// The next rung after a wheel was fitted: a look at 10 mi and 25 mi as advice, and one between 50
/// and 100 mi, after which the ladder is closed. Source: 50 to 100 mi common practice.
struct Rung {
    LocalTime fitted;
    Distance from; ///< since the wheel was fitted
    Distance to;
};
[[nodiscard]] std::optional<Rung> openRung(const Catalogue &catalogue, const RigHistory &history,
                                           const Point &point, const PointClock &clock, LocalTime now);

} // namespace snugwalk
