// SPDX-License-Identifier: Apache-2.0
// How fast the rig went at each moment, from a track of fixes.
#pragma once

#include <span>
#include <vector>

#include "base/geo.hpp"

namespace snugwalk {

/// Speeds of the fixes, or of the steps between them where a receiver gives none; straight lines between.
/// Asked in order of time it costs nothing to speak of.
/// Limits: nothing before the first fix, after the last, or between fixes more than 10 s apart; steps
///         faster than 60 m/s are left out
/// Tests:  tests/unit/road/tst_speed_track.cpp
class SpeedTrack {
public:
    explicit SpeedTrack(std::span<const Fix> fixes);
    [[nodiscard]] bool empty() const { return m_points.empty(); }
    [[nodiscard]] double start() const { return m_points.front().time; }
    /// m/s at `time` seconds since 1970, NaN where unknown.
    [[nodiscard]] double at(double time);

private:
    struct Point {
        double time = 0.0;
        double speed = 0.0;
    };
    std::vector<Point> m_points;
    std::size_t m_at = 0;
};

} // namespace snugwalk
