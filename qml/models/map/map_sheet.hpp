// SPDX-License-Identifier: Apache-2.0
// The map as it is drawn: everything in device-independent pixels from the view's upper left corner.
#pragma once

#include <optional>
#include <vector>

#include <QVariantList>

#include "map/clusters.hpp"
#include "map/grid.hpp"
#include "map/labels.hpp"
#include "map_items.hpp"

namespace snugwalk {

/// Where the map looks, and through which opening.
struct MapView {
    MapPoint middle;      ///< its longitude goes on counting over 180
    double degrees = 1.0; ///< of longitude, across the opening
    double width = 0.0;   ///< of the opening; 0: not known yet
    double height = 0.0;
    double target = 48.0;     ///< least distance between two things to press
    double letter = 9.0;      ///< width of a letter of a name, generous
    double lineHeight = 20.0; ///< of a name
    [[nodiscard]] MapFrame frame() const { return MapFrame::looking(middle, degrees, width / height); }
};

/// A shape, and what it stands for.
struct MapGroup {
    double x = 0.0;
    double y = 0.0;
    MapItem::Kind kind = MapItem::Kind::TripEnd;
    std::vector<MapItem> members; ///< the one whose shape it is first
};

struct MapSheet {
    MapView view;
    bool coastKnown = false;
    bool namesKnown = false;
    bool sea = false;
    QVariantList land;          ///< rings as [x, y, …], to be filled by the even-odd rule
    std::vector<GridLine> grid; ///< `at` in pixels
    struct Line {
        Id trip;
        RoadClass road = RoadClass::Unknown;
        std::vector<FlatPoint> points;
    };
    std::vector<Line> lines;
    std::vector<MapGroup> groups; ///< those in or near the view
    std::vector<PlaceLabel> labels;
};

/// Land, lines and shapes reach so much of the view's size over each of its edges, so that there is something
/// to see while it is moved.
inline constexpr double mapOver = 0.25;

/// \param coast, places may be null
[[nodiscard]] MapSheet mapSheet(const MapItems &items, const MapView &view, const Coast *coast,
                                const Gazetteer *places);

/// Everything of `items` with room around it; unchanged where there is nothing. `view` says how large the
/// opening is.
[[nodiscard]] MapView wholeView(const MapItems &items, MapView view);
/// The same of some spots.
[[nodiscard]] MapView viewOf(const std::vector<GeoPoint> &places, MapView view);
/// Kept to what the projection and the coast can show, and turned so that it lies beside `items`.
[[nodiscard]] MapView withinLimits(MapView view);

/// The trip whose line passes within `reach` of a point; null without one, the nearest of several.
[[nodiscard]] const Id *tripAt(const MapSheet &sheet, double x, double y, double reach);

} // namespace snugwalk
