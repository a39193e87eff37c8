// SPDX-License-Identifier: Apache-2.0
// The nearest point of the coast, and whether a place is on land.
#include <algorithm>
#include <cmath>
#include <vector>

#include "trip/geodesic.hpp"
#include "weather/coast_level.hpp"

namespace snugwalk {

void CoastLevel::toNearest(const Piece &piece, const Solid &place, Near &best) const
{
    MapPoint fromPoint = degrees(m_corners[piece.first]);
    Solid from = solid(fromPoint);
    for (std::size_t i = 1; i < piece.count; ++i) {
        const MapPoint toPoint = degrees(m_corners[piece.first + i]);
        const Solid to = solid(toPoint);
        const Solid along{to.x - from.x, to.y - from.y, to.z - from.z};
        const Solid away{place.x - from.x, place.y - from.y, place.z - from.z};
        const double length2 = along.x * along.x + along.y * along.y + along.z * along.z;
        double share = 0.0;
        if (length2 > 0.0) {
            const double dot = along.x * away.x + along.y * away.y + along.z * away.z;
            share = std::clamp(dot / length2, 0.0, 1.0);
        }
        const double x = away.x - share * along.x;
        const double y = away.y - share * along.y;
        const double z = away.z - share * along.z;
        const double squared = x * x + y * y + z * z;
        // where a ring was cut at the antimeridian there is land on both sides
        if (squared < best.squared && !isCut(m_corners[piece.first + i - 1], m_corners[piece.first + i]))
            best = {squared,
                    {fromPoint.latitude + share * (toPoint.latitude - fromPoint.latitude),
                     fromPoint.longitude + share * (toPoint.longitude - fromPoint.longitude)}};
        fromPoint = toPoint;
        from = to;
    }
}

GeoPoint CoastLevel::nearest(const GeoPoint &place) const
{
    const Solid here = solid({place.latitude, place.longitude});
    std::vector<double> atLeast; // metres, a bound from below for each piece
    atLeast.reserve(m_pieces.size());
    for (const Piece &piece : m_pieces) {
        const double middle =
            std::hypot(piece.middle.x - here.x, piece.middle.y - here.y, piece.middle.z - here.z);
        atLeast.push_back(std::max(0.0, middle - piece.reach));
    }
    Near best{INFINITY, {}};
    const auto likeliest = std::min_element(atLeast.begin(), atLeast.end()) - atLeast.begin();
    toNearest(m_pieces[static_cast<std::size_t>(likeliest)], here, best);
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
        if (atLeast[i] * atLeast[i] < best.squared)
            toNearest(m_pieces[i], here, best);
    }
    GeoPoint found;
    found.latitude = std::clamp(best.point.latitude, -90.0, 90.0);
    found.longitude = std::clamp(unwrapLongitude(best.point.longitude, 0.0), -180.0, 180.0);
    return found;
}

bool CoastLevel::isLand(const GeoPoint &place) const
{
    const double x = (place.longitude - m_west) / m_scaleX;
    const double y = (place.latitude - m_south) / m_scaleY;
    bool land = false;
    for (const Piece &piece : m_pieces) {
        if (piece.extent.north <= y)
            continue;
        // the meridian again, a turn or more further on, where the piece is counted there
        for (double at = x + std::ceil((piece.extent.west - x) / m_turn) * m_turn; at <= piece.extent.east;
             at += m_turn) {
            for (std::size_t i = piece.first; i + 1 < piece.first + piece.count; ++i) {
                const Corner &a = m_corners[i];
                const Corner &b = m_corners[i + 1];
                if ((a.x <= at) == (b.x <= at))
                    continue;
                const double share = (at - a.x) / (b.x - a.x);
                if (a.y + share * (b.y - a.y) > y)
                    land = !land;
            }
        }
    }
    return land;
}

} // namespace snugwalk
