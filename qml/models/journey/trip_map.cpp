// SPDX-License-Identifier: Apache-2.0
// Laying out a map: the box, its grid, and the land in it.
#include "trip_map.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace snugwalk {
namespace {

constexpr double kmPerDegree = 111.195;  // of a sphere of 6371 km: a sketch needs no more
constexpr double leastWidth = 10.0;      // km
constexpr double roomAround = 0.12;      // of the larger side, each way
constexpr double overEdge = 0.02;        // so that the cut edges of the land lie outside
constexpr double widestFine = 1200.0;    // km; a wider map shows no bay of the fine coast
constexpr double leastStep = 1.0 / 1200; // of the width: closer corners fall on one dot
constexpr int mostLines = 4;             // of the grid, each way

class Layout {
public:
    Layout(const Trip &trip, const Coast *coast) : m_trip(trip), m_coast(coast) {}
    TripMap make();

private:
    void findBox();
    void addLand();
    void addGrid();
    [[nodiscard]] FlatPoint flat(double latitude, double longitude) const
    {
        return {(longitude - m_west) * m_kmPerLon, (m_north - latitude) * kmPerDegree};
    }
    // Trips that cross 180 degrees go on counting.
    [[nodiscard]] double unrolled(double longitude) const
    {
        return longitude < m_reference - 180.0   ? longitude + 360.0
               : longitude > m_reference + 180.0 ? longitude - 360.0
                                                 : longitude;
    }

    const Trip &m_trip;
    const Coast *m_coast;
    TripMap m_map;
    double m_reference = 0.0;
    double m_west = 0.0;
    double m_north = 0.0;
    double m_kmPerLon = kmPerDegree;
};

void Layout::findBox()
{
    m_reference = m_trip.outline.front().longitude;
    double west = 1e9;
    double east = -1e9;
    double south = 90.0;
    double north = -90.0;
    for (const GeoPoint &p : m_trip.outline) {
        west = std::min(west, unrolled(p.longitude));
        east = std::max(east, unrolled(p.longitude));
        south = std::min(south, p.latitude);
        north = std::max(north, p.latitude);
    }
    const double middle = (south + north) / 2.0;
    m_kmPerLon = kmPerDegree * std::max(0.05, std::cos(middle * std::numbers::pi / 180.0));
    const double wide = (east - west) * m_kmPerLon;
    const double high = (north - south) * kmPerDegree;
    const double room = 2.0 * roomAround * std::max(wide, high);
    m_map.width = std::max({wide + room, (high + room) * mapShape, leastWidth});
    m_map.height = m_map.width / mapShape;
    m_west = (west + east) / 2.0 - m_map.width / 2.0 / m_kmPerLon;
    m_north = middle + m_map.height / 2.0 / kmPerDegree;
}

void Layout::addLand()
{
    if (m_coast == nullptr)
        return;
    m_map.coastKnown = true;
    const double overLon = overEdge * m_map.width / m_kmPerLon;
    const double overLat = overEdge * m_map.height / kmPerDegree;
    const GeoBox box{std::max(-90.0, m_north - m_map.height / kmPerDegree - overLat), m_west - overLon,
                     std::min(90.0, m_north + overLat), m_west + m_map.width / m_kmPerLon + overLon};
    if (box.east - box.west > 360.0)
        return;
    double area = 0.0;
    const CoastDetail detail = m_map.width > widestFine ? CoastDetail::Coarse : CoastDetail::Fine;
    for (const MapRing &ring : m_coast->landWithin(box, detail)) {
        std::vector<FlatPoint> corners;
        for (const MapPoint &point : ring) {
            const FlatPoint at = flat(point.latitude, point.longitude);
            const bool isNear =
                !corners.empty() &&
                std::hypot(at.x - corners.back().x, at.y - corners.back().y) < leastStep * m_map.width;
            if (!isNear)
                corners.push_back(at);
        }
        if (corners.size() < 3)
            continue;
        double ringArea = 0.0;
        for (std::size_t i = 0; i < corners.size(); ++i) {
            const FlatPoint &a = corners[i];
            const FlatPoint &b = corners[(i + 1) % corners.size()];
            ringArea += (a.x * b.y - b.x * a.y) / 2.0;
        }
        area += std::abs(ringArea);
        m_map.land.push_back(std::move(corners));
    }
    m_map.seaInView = area < 0.995 * m_map.width * m_map.height;
}

void Layout::addGrid()
{
    constexpr std::array steps = {0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 45.0};
    const auto add = [&](double from, double span, bool meridian) {
        const auto step =
            std::find_if(steps.begin(), steps.end(), [&](double s) { return span / s <= mostLines; });
        const double by = step == steps.end() ? steps.back() : *step;
        for (double k = std::ceil(from / by); k * by < from + span; k += 1.0) {
            const double degrees = k * by;
            const FlatPoint at = meridian ? flat(0.0, degrees) : flat(degrees, 0.0);
            m_map.grid.push_back({meridian ? at.x : at.y, degrees, meridian});
        }
    };
    add(m_west, m_map.width / m_kmPerLon, true);
    add(m_north - m_map.height / kmPerDegree, m_map.height / kmPerDegree, false);
}

TripMap Layout::make()
{
    if (m_trip.outline.size() < 2)
        return {};
    findBox();
    for (const GeoPoint &p : m_trip.outline)
        m_map.track.push_back(flat(p.latitude, unrolled(p.longitude)));
    for (const StopOver &stop : m_trip.summary.stops)
        m_map.stops.push_back(flat(stop.place.latitude, unrolled(stop.place.longitude)));
    addLand();
    addGrid();
    return std::move(m_map);
}

} // namespace

TripMap tripMap(const Trip &trip, const Coast *coast) { return Layout(trip, coast).make(); }

} // namespace snugwalk
