// SPDX-License-Identifier: Apache-2.0
// A trip's own frame, and what lies in it.
#include "trip_map.hpp"

namespace snugwalk {
namespace {

constexpr double overEdge = 0.02;        // so that the cut edges of the land lie outside
constexpr double leastStep = 1.0 / 1200; // of the width: closer corners fall on one dot

} // namespace

TripMap tripMap(const Trip &trip, const Coast *coast)
{
    if (trip.outline.size() < 2)
        return {};
    FrameRoom room;
    room.shape = mapShape;
    const MapFrame frame = *MapFrame::around(trip.outline, room);
    TripMap map;
    map.width = frame.width();
    map.height = frame.height();
    for (const GeoPoint &place : trip.outline)
        map.track.push_back(frame.at(place));
    for (const StopOver &stop : trip.summary.stops)
        map.stops.push_back(frame.at(stop.place));
    if (coast != nullptr) {
        MapLand land = landOf(*coast, frame, overEdge, leastStep);
        map.coastKnown = true;
        map.seaInView = land.seaInView;
        map.land = std::move(land.rings);
    }
    map.grid = gridOf(frame);
    return map;
}

} // namespace snugwalk
