// SPDX-License-Identifier: Apache-2.0
// What a track of fixes comes to: length, halts, gaps, climb.
#pragma once

#include <span>
#include <vector>

#include "trip/parsed_track.hpp"
#include "trip/trip.hpp"

namespace snugwalk {

/// Where altitudes come from: a barometer is steadier than satellites.
enum class AltitudeSource { Satellite, Barometer };

/// Sums up a journey. Linear in the fixes, and but for the stops in constant memory.
///
/// Left out, each counted by reason: positions that are impossible or known no better than 25 m;
/// times not after the fix before; steps faster than 60 m/s. The first fix, and one after a gap,
/// must agree with most of the ten that follow, so that one wild fix cannot cost the rest.
/// Halts: fixes that stay within 15 m for 60 s are one point, their median; 5 minutes are reported.
/// Length: straight lines between points at least 10 m and three times the accuracy apart.
/// Gaps: over 10 minutes or 2 km between fixes is a straight line, counted in `inferred` too; the
/// road may be a good deal longer.
///
/// Source:   step inflation [RANACHER-2016], from memory; the limits are common practice, no source
/// Accuracy: 0.1 m on tracks without noise; white noise of 3 m adds 1.4 % at 25 m/s, 10 % at a walk
/// Limits:   accuracy is taken as 5 m times HDOP where the receiver gives only that; no accuracy at
///           all counts as good; altitudes outside -1000..10,000 m are left out
/// Tests:    tests/unit/trip/tst_trip_track.cpp, tests/published/trip/tst_trip_inflation.cpp
[[nodiscard]] TrackSummary summarise(std::span<const Fix> fixes,
                                     AltitudeSource source = AltitudeSource::Satellite);

/// The same with the reader's own drops put first, so that nothing lost is forgotten.
[[nodiscard]] TrackSummary summarise(const ParsedTrack &track,
                                     AltitudeSource source = AltitudeSource::Satellite);

/// The very points between which the length is summed; without altitude and accuracy they make the
/// outline of a trip, after `simplify`.
[[nodiscard]] std::vector<GeoPoint> measuredPoints(std::span<const Fix> fixes);

} // namespace snugwalk
