// SPDX-License-Identifier: Apache-2.0
// A flat map's frame: which part of the earth it shows, and where a place lies on it.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "base/geo.hpp"
#include "weather/coast_level.hpp"

namespace snugwalk {

/// Kilometres east of a frame's west edge and south of its north edge.
struct FlatPoint {
    double x = 0.0;
    double y = 0.0;
};
using FlatRing = std::vector<FlatPoint>; ///< closed, its first point not repeated

/// How a frame is laid around places.
struct FrameRoom {
    double shape = 4.0 / 3.0; ///< width over height
    double leastWidth = 10.0; ///< kilometres, so that there is something around
    double roomAround = 0.12; ///< of the larger side, each way
};

/// Mercator's projection of the sphere, north up: shapes are true everywhere, and moving or zooming is a
/// shift and a scale. What crosses 180 degrees goes on counting from the middle. Nothing is shown beyond 85
/// degrees of latitude, where the projection has no end.
///
/// Formula:  x = lambda, y = asinh(tan phi); one unit is 6371 km cos(phi of the middle)
/// Source:   from memory; checked against PROJ (`+proj=merc +R=6371000`)
/// Accuracy: kilometres are true along the middle parallel to 0.5 % (sphere instead of ellipsoid); 200 km
///           north or south of it at 45 degrees they are 3 % out
/// Tests:    tests/unit/map/tst_frame.cpp, tests/reference/map/nearest_place.py
class MapFrame {
public:
    /// Everything of `places` with room around it; nothing without a place. Each must be `isValid`.
    [[nodiscard]] static std::optional<MapFrame> around(std::span<const GeoPoint> places,
                                                        const FrameRoom &room);
    /// \param middle its longitude may lie beyond 180 \param degreesAcross of longitude, over 0, 360 at most
    /// \param shape width over height
    [[nodiscard]] static MapFrame looking(const MapPoint &middle, double degreesAcross, double shape);

    [[nodiscard]] double width() const { return m_width; } ///< kilometres along the middle parallel
    [[nodiscard]] double height() const { return m_height; }
    [[nodiscard]] double degreesAcross() const;
    [[nodiscard]] MapPoint middle() const { return placeAt({m_width / 2.0, m_height / 2.0}); }

    [[nodiscard]] FlatPoint at(double latitude, double longitude) const;
    /// On the turn that is nearest to the middle.
    [[nodiscard]] FlatPoint at(const GeoPoint &place) const;
    [[nodiscard]] MapPoint placeAt(const FlatPoint &point) const;
    /// \param over the share of width and height that is added at each edge; one turn wide at most
    [[nodiscard]] GeoBox box(double over = 0.0) const;

private:
    MapFrame() = default;

    double m_west = 0.0; ///< radians
    double m_top = 0.0;  ///< y of the projection
    double m_unit = 1.0; ///< kilometres a unit of the projection
    double m_width = 1.0;
    double m_height = 1.0;
};

} // namespace snugwalk
