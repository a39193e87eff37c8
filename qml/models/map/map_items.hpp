// SPDX-License-Identifier: Apache-2.0
// What of a rig's history has a place on earth.
#pragma once

#include <string>
#include <vector>

#include "base/geo.hpp"
#include "base/id.hpp"
#include "snapshot.hpp"

namespace snugwalk {

/// A spot of the map. The order of the kinds is that of their weight: of several the last one is shown.
struct MapItem {
    enum class Kind { TripEnd, Stay, PastFinding, Finding, Watch, MendSoon, Hold };
    Kind kind = Kind::TripEnd;
    Id id;
    GeoPoint place;
};
/// end, stay, past, open, watch, mend or hold: the shape.
[[nodiscard]] const char *slug(MapItem::Kind kind);

struct MapLine {
    Id trip;
    RoadClass road = RoadClass::Unknown;
    std::vector<GeoPoint> points;
};

struct MapItems {
    std::vector<MapItem> spots;
    std::vector<MapLine> lines;
};

/// What a person wants to see.
struct MapWish {
    bool findings = true;
    bool past = true; ///< findings that are mended or gone too
    bool trips = true;
    bool stays = true;
    friend bool operator==(const MapWish &, const MapWish &) = default;
};

/// Findings where they were first seen, trips with a line, stays; only what has a place.
[[nodiscard]] MapItems mapItems(const Snapshot &snapshot, const MapWish &wish);

/// Whether anything would be there with every wish granted.
[[nodiscard]] bool hasMapItems(const Snapshot &snapshot);

} // namespace snugwalk
