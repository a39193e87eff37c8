// SPDX-License-Identifier: Apache-2.0
// The land of a map: which coast is drawn at its scale, and which corners can be seen.
#pragma once

#include "map/frame.hpp"
#include "weather/coast.hpp"

namespace snugwalk {

struct MapLand {
    std::vector<FlatRing> rings; ///< to be filled by the even-odd rule
    bool seaInView = false;
};

/// The land of `frame` and of `over` of it around, so that the cut edges lie outside. Corners closer to the
/// one before than `leastStep` of the width fall on one dot and are left out. Over 1200 km across the coarse
/// coast is drawn: no bay of the fine one would be seen.
[[nodiscard]] MapLand landOf(const Coast &coast, const MapFrame &frame, double over, double leastStep);

} // namespace snugwalk
