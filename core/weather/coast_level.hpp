// SPDX-License-Identifier: Apache-2.0
// The coastline at one level of detail: rings of whole numbers, and pieces of them to look through quickly.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "base/geo.hpp"
#include "base/result.hpp"

namespace snugwalk {

class DataBytes;

/// Degrees; `west` < `east`, which may pass 180. At most one turn wide.
struct GeoBox {
    double south = 0.0;
    double west = 0.0;
    double north = 0.0;
    double east = 0.0;
};

/// A corner of an outline, degrees; the longitude may lie beyond 180 and so is not that of a `GeoPoint`.
struct MapPoint {
    double latitude = 0.0;
    double longitude = 0.0;
};
using MapRing = std::vector<MapPoint>; ///< closed, its first point not repeated

class CoastLevel {
public:
    [[nodiscard]] static Result<CoastLevel> read(DataBytes &bytes);

    /// The point of the coast nearest to `place` in a straight line.
    [[nodiscard]] GeoPoint nearest(const GeoPoint &place) const;
    /// Whether the meridian from `place` to the North Pole, which is sea, meets the coast an odd number of
    /// times.
    [[nodiscard]] bool isLand(const GeoPoint &place) const;
    [[nodiscard]] std::vector<MapRing> landWithin(const GeoBox &box) const;

private:
    struct Corner {
        std::int32_t x = 0; ///< runs on over the antimeridian within a ring
        std::int32_t y = 0;
    };
    struct Extent {
        std::int32_t west = INT32_MAX;
        std::int32_t east = INT32_MIN;
        std::int32_t south = INT32_MAX;
        std::int32_t north = INT32_MIN;
        void add(const Corner &corner);
    };
    struct Ring {
        std::size_t first = 0;
        std::size_t count = 0; ///< corners, the first one again at the end
        Extent extent;
    };
    struct Solid {
        double x = 0.0;
        double y = 0.0;
        double z = 0.0;
    };
    /// Up to 33 corners in a row, within `reach` metres of the first.
    struct Piece {
        std::size_t first = 0;
        std::size_t count = 0;
        Extent extent;
        Solid middle;
        double reach = 0.0;
    };
    struct Near {
        double squared = 0.0; ///< m²
        MapPoint point;
    };

    Status readRing(DataBytes &bytes, std::size_t mostCorners);
    void cutIntoPieces();
    void toNearest(const Piece &piece, const Solid &place, Near &best) const;
    [[nodiscard]] bool isCut(const Corner &a, const Corner &b) const;
    [[nodiscard]] MapPoint degrees(const Corner &corner) const;
    [[nodiscard]] MapRing ringInDegrees(const Ring &ring) const;
    [[nodiscard]] static Solid solid(const MapPoint &point);

    double m_scaleX = 0.0;
    double m_west = 0.0;
    double m_scaleY = 0.0;
    double m_south = 0.0;
    std::int32_t m_turn = 0; ///< a whole turn in x
    std::vector<Corner> m_corners;
    std::vector<Ring> m_rings;
    std::vector<Piece> m_pieces;
};

/// The part of a ring within a box, by cutting it at each edge in turn [SUTHERLAND-HODGMAN-1974]; empty when
/// they do not meet.
[[nodiscard]] MapRing cutToBox(MapRing ring, const GeoBox &box);

} // namespace snugwalk
