// SPDX-License-Identifier: Apache-2.0
// Directions of the last two seconds, knocks, and samples near a rail.
#include "road/accel/shake_watch.hpp"

#include <algorithm>
#include <cmath>

namespace snugwalk {
namespace {

constexpr double knock = 25.0;                      // m/s^2
constexpr double turnCosine = 0.98480775301220806;  // of 10 degrees
constexpr double standardGravity = 9.80665;         // m/s^2
constexpr std::array rails = {2.0, 4.0, 8.0, 16.0}; // g

// Four at a time, side by side.
double largestOf(const std::vector<double> &values, std::size_t count)
{
    std::array<double, 4> largest{};
    std::size_t i = 0;
    for (; i + 4 <= count; i += 4) {
        for (std::size_t lane = 0; lane < 4; ++lane) {
            const double size = std::abs(values[i + lane]);
            largest[lane] = size > largest[lane] ? size : largest[lane];
        }
    }
    for (; i < count; ++i)
        largest[0] = std::max(largest[0], std::abs(values[i]));
    return std::max(std::max(largest[0], largest[1]), std::max(largest[2], largest[3]));
}

} // namespace

void ShakeEvents::add(const ShakeEvents &other)
{
    turned = turned || other.turned;
    knocks += other.knocks;
    longest = std::max(longest, other.longest);
}

void ShakeWatch::reset()
{
    m_blocks = 0;
    m_run = 0;
}

ShakeEvents ShakeWatch::take(const VerticalBlock &block, const std::array<double, 3> &direction)
{
    ShakeEvents events;
    const std::size_t known = std::min(m_blocks, m_directions.size());
    for (std::size_t i = 0; i < known; ++i) {
        const auto &d = m_directions[i];
        events.turned |= d[0] * direction[0] + d[1] * direction[1] + d[2] * direction[2] < turnCosine;
    }
    m_directions[m_blocks++ % m_directions.size()] = direction;
    m_samples += static_cast<long long>(block.filled);
    const double largest = std::max({largestOf(block.x, block.filled), largestOf(block.y, block.filled),
                                     largestOf(block.z, block.filled)});
    m_largest = std::max(m_largest, largest);
    if (largest > 0.99 * rails[0] * standardGravity)
        watchRails(block, largest);
    // three axes of this size may make a knock together
    if (m_run > 0 || largest * std::sqrt(3.0) > knock)
        watchKnocks(block, events);
    return events;
}

void ShakeWatch::watchRails(const VerticalBlock &block, double largest)
{
    for (std::size_t r = 0; r < rails.size(); ++r) {
        const double rail = rails[r] * standardGravity;
        if (largest < 0.99 * rail)
            return;
        for (std::size_t i = 0; i < block.filled; ++i) {
            const auto near = [&](double a) { return std::abs(std::abs(a) - rail) <= 0.01 * rail; };
            m_nearRail[r] += near(block.x[i]) || near(block.y[i]) || near(block.z[i]) ? 1 : 0;
        }
    }
}

void ShakeWatch::watchKnocks(const VerticalBlock &block, ShakeEvents &events)
{
    for (std::size_t i = 0; i < block.filled; ++i) {
        if (std::hypot(block.x[i], block.y[i], block.z[i]) > knock) {
            if (m_run++ == 0)
                ++events.knocks;
        } else {
            m_run = 0;
        }
        events.longest = std::max(events.longest, static_cast<double>(m_run) / m_rate);
    }
}

bool ShakeWatch::clipped() const
{
    for (std::size_t r = 0; r < rails.size(); ++r) {
        if (m_largest <= 1.01 * rails[r] * standardGravity)
            return static_cast<double>(m_nearRail[r]) > 0.001 * static_cast<double>(m_samples);
    }
    return false;
}

} // namespace snugwalk
