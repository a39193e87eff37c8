// SPDX-License-Identifier: Apache-2.0
// Steps shorter than the noise are not added up, or standing still would make miles.
#include "trip/odometer.hpp"

#include <algorithm>

#include "trip/geodesic.hpp"

namespace snugwalk {
namespace {

constexpr double leastSpacing = 10.0; // metres
constexpr double accuracies = 3.0;
// No road goes lower or higher; a receiver that says so has no altitude.
constexpr double lowestLand = -1000.0;
constexpr double highestLand = 10'000.0;

} // namespace

void Odometer::addAltitude(double altitude)
{
    m_climb.add(altitude);
    m_lowest = m_altitudes == 0 ? altitude : std::min(m_lowest, altitude);
    m_highest = m_altitudes == 0 ? altitude : std::max(m_highest, altitude);
    ++m_altitudes;
}

void Odometer::add(const GeoPoint &point, std::optional<double> accuracy, bool gap)
{
    if (point.altitude && *point.altitude >= lowestLand && *point.altitude <= highestLand)
        addAltitude(*point.altitude);
    const double step = m_last ? stepBetween(*m_last, point).si() : 0.0;
    const double spacing = std::max(leastSpacing, accuracies * accuracy.value_or(0.0));
    if (m_last && !gap && step < spacing)
        return;
    m_length += step;
    m_inferred += gap ? step : 0.0;
    m_last = point;
    ++m_points;
}

} // namespace snugwalk
