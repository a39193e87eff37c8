// SPDX-License-Identifier: Apache-2.0
// Fewer points for a sketch of a track.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "base/geo.hpp"

namespace snugwalk {

/// The points without which the line would move by more than `tolerance`; first and last always
/// stay. When that takes over `atMost` (2 or more) points, those that matter most are kept.
/// Measure lengths before this: simplifying only ever shortens.
///
/// Method:  [DOUGLAS-PEUCKER-1973], distance to the segment, the widest deviation first, without
///          recursion; time points x kept points at worst, points x log at a usual track
/// Limits:  plane metres at the mid-latitude of each segment; the antimeridian is crossed the short way
/// Tests:   tests/published/trip/tst_trip_simplify.cpp
[[nodiscard]] std::vector<GeoPoint> simplify(std::span<const GeoPoint> points, Length tolerance,
                                             std::size_t atMost);

} // namespace snugwalk
