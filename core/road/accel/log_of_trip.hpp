// SPDX-License-Identifier: Apache-2.0
// What a log of shaking and the trip it belongs to know of each other.
#pragma once

#include "base/result.hpp"
#include "trip/trip.hpp"

namespace snugwalk {

/// Mean speed in m/s while it moved: the length over the time less the halts; 0 where no time is known.
[[nodiscard]] double movingSpeed(const Trip &trip);

/// \param from, to first and last sample, seconds since 1970
/// \returns `InvalidInput` for a log that lies more than a minute, the slack of two clocks, outside the trip.
/// Tests:    tests/unit/road/tst_speed_track.cpp
[[nodiscard]] Status checkLogTime(const Trip &trip, double from, double to);

} // namespace snugwalk
