// SPDX-License-Identifier: Apache-2.0
// The land within a box, for a map.
#include <algorithm>
#include <cmath>

#include "weather/coast_level.hpp"

namespace snugwalk {
namespace {

constexpr double turn = 360.0;

/// One edge of the box: the side `sign * member >= sign * bound` stays.
struct Edge {
    double MapPoint::*member;
    double bound;
    double sign;
    [[nodiscard]] double inside(const MapPoint &p) const { return sign * (p.*member - bound); }
};

MapPoint crossing(const MapPoint &a, const MapPoint &b, const Edge &edge)
{
    const double share = edge.inside(a) / (edge.inside(a) - edge.inside(b));
    MapPoint cut{a.latitude + share * (b.latitude - a.latitude),
                 a.longitude + share * (b.longitude - a.longitude)};
    cut.*edge.member = edge.bound;
    return cut;
}

MapRing cutAt(const MapRing &ring, const Edge &edge)
{
    MapRing kept;
    kept.reserve(ring.size());
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const MapPoint &a = ring[i];
        const MapPoint &b = ring[(i + 1) % ring.size()];
        if (edge.inside(a) >= 0.0)
            kept.push_back(a);
        if ((edge.inside(a) >= 0.0) != (edge.inside(b) >= 0.0))
            kept.push_back(crossing(a, b, edge));
    }
    return kept;
}

} // namespace

MapRing cutToBox(MapRing ring, const GeoBox &box)
{
    for (const Edge &edge :
         {Edge{&MapPoint::latitude, box.south, 1.0}, Edge{&MapPoint::latitude, box.north, -1.0},
          Edge{&MapPoint::longitude, box.west, 1.0}, Edge{&MapPoint::longitude, box.east, -1.0}})
        ring = cutAt(ring, edge);
    return ring;
}

MapRing CoastLevel::ringInDegrees(const Ring &ring) const
{
    MapRing out;
    out.reserve(ring.count + 2);
    for (std::size_t i = 0; i < ring.count; ++i)
        out.push_back(degrees(m_corners[ring.first + i]));
    const Corner first = m_corners[ring.first];
    const Corner last = m_corners[ring.first + ring.count - 1];
    if (first.x == last.x) {
        out.pop_back();
    } else { // round the South Pole, which on a map is its lower edge
        out.push_back({-90.0, out.back().longitude});
        out.push_back({-90.0, out.front().longitude});
    }
    return out;
}

std::vector<MapRing> CoastLevel::landWithin(const GeoBox &box) const
{
    std::vector<MapRing> found;
    for (const Ring &ring : m_rings) {
        const MapPoint lowest = degrees({ring.extent.west, ring.extent.south});
        const MapPoint highest = degrees({ring.extent.east, ring.extent.north});
        const bool pole = highest.longitude - lowest.longitude >= turn - m_scaleX;
        if (highest.latitude < box.south || (lowest.latitude > box.north && !pole))
            continue;
        for (double shift = std::ceil((box.west - highest.longitude) / turn) * turn;
             lowest.longitude + shift <= box.east; shift += turn) {
            MapRing moved = ringInDegrees(ring);
            for (MapPoint &point : moved)
                point.longitude += shift;
            moved = cutToBox(std::move(moved), box);
            if (moved.size() >= 3)
                found.push_back(std::move(moved));
        }
    }
    return found;
}

} // namespace snugwalk
