// SPDX-License-Identifier: Apache-2.0
// A running mean says who belongs, a median where the place is: one outlier moves neither far.
#include "trip/halt.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>

#include "trip/geodesic.hpp"

namespace snugwalk {
namespace {

using namespace std::chrono;

constexpr double reach = 15.0; // metres
constexpr auto standing = seconds(60);
constexpr auto worthTelling = minutes(5);
constexpr auto strayTime = minutes(2);
constexpr std::size_t maxSamples = 512;

double median(std::vector<double> values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1)
        return *middle;
    return (*std::max_element(values.begin(), middle) + *middle) / 2.0;
}

GeoPoint wrapped(GeoPoint point)
{
    if (point.longitude > 180.0)
        point.longitude -= 360.0;
    else if (point.longitude < -180.0)
        point.longitude += 360.0;
    return point;
}

} // namespace

Halt::Halt(const Fix &first) : m_from(first.time), m_to(first.time), m_middle(first.point), m_count(1)
{
    m_samples.push_back(first.point);
}

bool Halt::holds(const Fix &fix) const { return stepBetween(wrapped(m_middle), fix.point).si() <= reach; }

void Halt::add(const Fix &fix)
{
    m_to = fix.time;
    GeoPoint point = fix.point;
    point.longitude = unwrapLongitude(point.longitude, m_samples.front().longitude);
    ++m_count;
    const double share = 1.0 / static_cast<double>(m_count);
    m_middle.latitude += (point.latitude - m_middle.latitude) * share;
    m_middle.longitude += (point.longitude - m_middle.longitude) * share;
    if (m_count % m_stride == 0)
        sample(point);
}

// When full, every other sample goes and half as many come: a day needs no more room than a minute.
void Halt::sample(const GeoPoint &point)
{
    if (m_samples.size() == maxSamples) {
        for (std::size_t i = 0; i < maxSamples / 2; ++i)
            m_samples[i] = m_samples[2 * i];
        m_samples.resize(maxSamples / 2);
        m_stride *= 2;
    }
    m_samples.push_back(point);
}

bool Halt::stands() const { return m_to - m_from >= standing; }

GeoPoint Halt::place() const
{
    std::vector<double> latitudes, longitudes, altitudes;
    for (const GeoPoint &point : m_samples) {
        latitudes.push_back(point.latitude);
        longitudes.push_back(point.longitude);
        if (point.altitude && std::isfinite(*point.altitude))
            altitudes.push_back(*point.altitude);
    }
    GeoPoint place{median(std::move(latitudes)), median(std::move(longitudes)), std::nullopt, std::nullopt};
    if (!altitudes.empty())
        place.altitude = median(std::move(altitudes));
    return wrapped(place);
}

void StopList::add(const Halt &halt)
{
    const GeoPoint place = halt.place();
    if (m_open && halt.from() - m_open->to <= strayTime &&
        stepBetween(m_open->place, place).si() <= 2.0 * reach) {
        m_open->to = halt.to();
        return;
    }
    close();
    m_open = StopOver{halt.from(), halt.to(), place};
}

void StopList::close()
{
    if (m_open && m_open->to - m_open->from >= worthTelling)
        m_stops.push_back(*m_open);
    m_open.reset();
}

std::vector<StopOver> StopList::finish()
{
    close();
    return std::move(m_stops);
}

} // namespace snugwalk
