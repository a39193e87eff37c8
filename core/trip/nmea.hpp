// SPDX-License-Identifier: Apache-2.0
// Reading the sentences that satellite receivers send, as their logs have them.
#pragma once

#include "base/result.hpp"
#include "trip/parsed_track.hpp"

namespace snugwalk {

/// The fixes of RMC and GGA sentences of any talker. Both sentences of one moment make one fix; the
/// date comes from the nearest RMC. Recordings put together in one log are sorted by time. Other sentences,
/// comments, binary messages and whatever stands before a `$` are passed over; a bad sentence costs only
/// itself.
///
/// \param bytes  the whole log, at most 64 MiB.
/// \returns `InvalidInput` when no fix can be used, saying why; `OutOfRange` beyond the limit.
///
/// Source:  [NMEA-0183] sentence layout, checksum, 82 characters a line; years 80 to 99 are 1980 to
///          1999, as the system began in 1980
/// Limits:  sentences to 1024 characters are read, longer ones counted as `too_long`
/// Tests:   tests/unit/trip/tst_trip_nmea.cpp
[[nodiscard]] Result<ParsedTrack> parseNmea(std::string_view bytes);

} // namespace snugwalk
