// SPDX-License-Identifier: Apache-2.0
// Telling a hand on the sensor, a knock and a sensor at its rails from a rough road.
#pragma once

#include <array>
#include <cstddef>

#include "road/accel/vertical.hpp"

namespace snugwalk {

/// What happened in a stretch of samples.
struct ShakeEvents {
    bool turned = false;  ///< gravity's direction changed by more than 10 degrees within 2 s
    int knocks = 0;       ///< runs of samples over 25 m/s^2
    double longest = 0.0; ///< of these, seconds
    void add(const ShakeEvents &other);
    /// A turn, or a single knock shorter than 30 ms: rough roads knock again and again.
    [[nodiscard]] bool handled() const { return turned || (knocks == 1 && longest < 0.03); }
};

/// Goes along with the blocks of half a second.
class ShakeWatch {
public:
    explicit ShakeWatch(double rate) : m_rate(rate) {}
    void reset();
    [[nodiscard]] ShakeEvents take(const VerticalBlock &block, const std::array<double, 3> &direction);
    /// More than 0.1 % of the samples lie within 1 % of 2, 4, 8 or 16 g, and none beyond.
    [[nodiscard]] bool clipped() const;

private:
    void watchRails(const VerticalBlock &block, double largest);
    void watchKnocks(const VerticalBlock &block, ShakeEvents &events);

    double m_rate;
    std::array<std::array<double, 3>, 4> m_directions{}; ///< of the last 2 s
    std::size_t m_blocks = 0;
    long long m_run = 0; ///< samples over the limit just now
    std::array<long long, 4> m_nearRail{};
    double m_largest = 0.0;
    long long m_samples = 0;
};

} // namespace snugwalk
