// SPDX-License-Identifier: Apache-2.0
// Thinning the coast for a map.
#include "map/land.hpp"

#include <cmath>

namespace snugwalk {
namespace {

constexpr double widestFine = 1200.0; // km
constexpr double allLand = 0.995;     // of the area

double areaOf(const FlatRing &ring)
{
    double area = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const FlatPoint &a = ring[i];
        const FlatPoint &b = ring[(i + 1) % ring.size()];
        area += (a.x * b.y - b.x * a.y) / 2.0;
    }
    return std::abs(area);
}

} // namespace

MapLand landOf(const Coast &coast, const MapFrame &frame, double over, double leastStep)
{
    MapLand land;
    const GeoBox box = frame.box(over);
    const CoastDetail detail = frame.width() > widestFine ? CoastDetail::Coarse : CoastDetail::Fine;
    const double least = leastStep * frame.width();
    double area = 0.0;
    for (const MapRing &ring : coast.landWithin(box, detail)) {
        FlatRing corners;
        for (const MapPoint &point : ring) {
            const FlatPoint at = frame.at(point.latitude, point.longitude);
            if (corners.empty() || std::hypot(at.x - corners.back().x, at.y - corners.back().y) >= least)
                corners.push_back(at);
        }
        if (corners.size() < 3)
            continue;
        area += areaOf(corners);
        land.rings.push_back(std::move(corners));
    }
    const FlatPoint topLeft = frame.at(box.north, box.west);
    const FlatPoint bottomRight = frame.at(box.south, box.east);
    land.seaInView = area < allLand * (bottomRight.x - topLeft.x) * (bottomRight.y - topLeft.y);
    return land;
}

} // namespace snugwalk
