// SPDX-License-Identifier: Apache-2.0
// Speeds from fixes, and finding the one for a moment.
#include "road/accel/speed_track.hpp"

#include <cmath>
#include <limits>

#include "trip/geodesic.hpp"

namespace snugwalk {
namespace {

constexpr double longestStep = 10.0; // seconds
constexpr double fastest = 60.0;     // m/s
constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

double secondsOf(const Fix &fix) { return static_cast<double>(toMillis(fix.time)) * 1e-3; }

} // namespace

SpeedTrack::SpeedTrack(std::span<const Fix> fixes)
{
    const Fix *before = nullptr;
    for (const Fix &fix : fixes) {
        const double time = secondsOf(fix);
        if (!isValid(fix.point) || (before != nullptr && time <= secondsOf(*before)))
            continue;
        if (fix.speed) {
            m_points.push_back({time, fix.speed->si()});
        } else if (before != nullptr) {
            // the speed of a step is that of its middle
            const double from = secondsOf(*before);
            const double speed = stepBetween(before->point, fix.point).si() / (time - from);
            if (speed <= fastest && time - from <= longestStep)
                m_points.push_back({(from + time) / 2.0, speed});
        }
        before = &fix;
    }
}

double SpeedTrack::at(double time)
{
    if (m_points.empty() || time < m_points.front().time || time > m_points.back().time)
        return unknown;
    if (m_points[m_at].time > time)
        m_at = 0;
    while (m_at + 1 < m_points.size() && m_points[m_at + 1].time < time)
        ++m_at;
    if (m_at + 1 == m_points.size())
        return m_points[m_at].speed;
    const Point &a = m_points[m_at];
    const Point &b = m_points[m_at + 1];
    if (time == b.time)
        return b.speed;
    if (b.time - a.time > longestStep)
        return unknown;
    return a.speed + (b.speed - a.speed) * (time - a.time) / (b.time - a.time);
}

} // namespace snugwalk
