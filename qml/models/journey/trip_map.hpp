// SPDX-License-Identifier: Apache-2.0
// A trip laid on the outline of the land, flat and in kilometres, ready to be drawn at any size.
#pragma once

#include <vector>

#include <QVariantMap>

#include "map/grid.hpp"
#include "map/land.hpp"
#include "trip/trip.hpp"
#include "voice.hpp"

namespace snugwalk {

/// In kilometres of the middle parallel, see `MapFrame`.
struct TripMap {
    double width = 0.0; ///< 0: the trip has no track to draw
    double height = 0.0;
    std::vector<FlatPoint> track;
    std::vector<FlatPoint> stops; ///< as the trip's summary has them
    std::vector<FlatRing> land;   ///< even-odd; reach a little over the edges
    std::vector<GridLine> grid;
    bool coastKnown = false; ///< a coast was at hand; without one nothing says where the sea is
    bool seaInView = false;
};

/// The map's width over its height.
inline constexpr double mapShape = 4.0 / 3.0;

/// Everything of the trip with room around it, 10 km across at least. \param coast may be null.
[[nodiscard]] TripMap tripMap(const Trip &trip, const Coast *coast);

/// {width, height, track: [x, y, …], stops: [{x, y}], land: [[x, y, …]], grid: [{at, text, meridian}],
/// sea, scale: {length, text}, dash, spoken}; lengths in kilometres.
[[nodiscard]] QVariantMap mapWords(const Voice &voice, const Trip &trip, const TripMap &map);

} // namespace snugwalk
