// SPDX-License-Identifier: Apache-2.0
// Putting a trip together.
#include "trip/make_trip.hpp"

#include "base/text.hpp"
#include "base/units.hpp"
#include "trip/gpx.hpp"
#include "trip/nmea.hpp"
#include "trip/simplify.hpp"
#include "trip/track.hpp"

namespace snugwalk {

Result<ParsedTrack> parseTrack(std::string_view bytes)
{
    std::string_view start = bytes.substr(0, 256);
    if (start.starts_with("\xEF\xBB\xBF"))
        start.remove_prefix(3);
    return trim(start).starts_with('<') ? parseGpx(bytes) : parseNmea(bytes);
}

Result<Trip> makeTrip(const ParsedTrack &track, const TripNotes &notes)
{
    Trip trip;
    trip.summary = summarise(track);
    if (trip.summary.fixesKept < 2 || !trip.summary.start || !trip.summary.end)
        return Error{Errc::InvalidInput, "fewer than two points of the track can be used", notes.sourceName,
                     "give a track with times, recorded on the way"};
    trip.title = notes.title.empty() ? track.name : notes.title;
    if (trip.title.empty())
        trip.title = notes.sourceName;
    trip.road = notes.road;
    trip.start = {*trip.summary.start, notes.offset};
    trip.end = {*trip.summary.end, notes.offset};
    trip.sourceName = notes.sourceName;
    trip.note = notes.note;
    trip.outline = simplify(measuredPoints(track.fixes), metres(20), outlineLimit);
    return trip;
}

} // namespace snugwalk
