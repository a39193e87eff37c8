// SPDX-License-Identifier: Apache-2.0
// From the bytes of a track file to a trip of the logbook.
#pragma once

#include <string>
#include <string_view>

#include "base/result.hpp"
#include "trip/parsed_track.hpp"
#include "trip/trip.hpp"

namespace snugwalk {

/// GPX or NMEA 0183, told apart by what the bytes start with; errors of the two parsers.
[[nodiscard]] Result<ParsedTrack> parseTrack(std::string_view bytes);

struct TripNotes {
    std::string title; ///< the track's own name when empty
    RoadClass road = RoadClass::Unknown;
    std::string sourceName;
    std::string note;
    ZoneOffset offset; ///< in which its times are shown: tracks are in UTC
};

/// Summary, outline and times of a track. \returns `InvalidInput` when fewer than two of its points
/// can be used.
[[nodiscard]] Result<Trip> makeTrip(const ParsedTrack &track, const TripNotes &notes);

} // namespace snugwalk
