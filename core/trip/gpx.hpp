// SPDX-License-Identifier: Apache-2.0
// Reading tracks from GPX, the exchange format of satellite receivers.
#pragma once

#include "base/result.hpp"
#include "trip/parsed_track.hpp"

namespace snugwalk {

/// The timed points of every track of a GPX 1.1 or 1.0 file, segments in order of time. Routes and waypoints
/// are plans, not journeys, and are left out.
///
/// \param bytes  the whole file, at most 64 MiB, 5 million points, 32 levels deep.
/// \returns `InvalidInput` with line and column for what is not well-formed (a file that breaks off
///          too), declares entities, or has no point with a time; `OutOfRange` beyond the limits.
///
/// Source:  [GPX-1.1] schema: latitude, longitude in degrees WGS84, `ele` in metres, `time` in UTC
/// Limits:  a time without a zone is read as UTC, as the schema says
/// Tests:   tests/unit/trip/tst_trip_gpx.cpp
[[nodiscard]] Result<ParsedTrack> parseGpx(std::string_view bytes);

} // namespace snugwalk
