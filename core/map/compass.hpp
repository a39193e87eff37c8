// SPDX-License-Identifier: Apache-2.0
// A direction as one of eight.
#pragma once

#include <array>
#include <cmath>
#include <string_view>

namespace snugwalk {

/// n, ne, e, se, s, sw, w or nw: the one within 22.5 degrees of `bearing`, degrees clockwise from north; any
/// finite number of turns.
[[nodiscard]] inline std::string_view compassPoint(double bearing)
{
    constexpr std::array<std::string_view, 8> points = {"n", "ne", "e", "se", "s", "sw", "w", "nw"};
    const double eighths = std::fmod(std::round(bearing / 45.0), 8.0);
    return points[static_cast<std::size_t>(eighths < 0.0 ? eighths + 8.0 : eighths)];
}

} // namespace snugwalk
