// SPDX-License-Identifier: Apache-2.0
// Meridians and parallels of a map, and the length of its scale bar.
#pragma once

#include "map/frame.hpp"

namespace snugwalk {

/// A meridian or a parallel across the whole map.
struct GridLine {
    double at = 0.0;      ///< x of a meridian, y of a parallel, kilometres
    double degrees = 0.0; ///< of longitude, -180 to 180, or latitude
    int decimals = 0;     ///< that the step between two lines asks for
    bool meridian = false;
};

/// At round degrees, four each way at most.
[[nodiscard]] std::vector<GridLine> gridOf(const MapFrame &frame);

/// The longest 1, 2 or 5 times a power of ten (0.1 at least) of `unitKm` kilometres that is no longer than
/// `longestKm`; the least of them where none is.
[[nodiscard]] double scaleLength(double longestKm, double unitKm);

} // namespace snugwalk
