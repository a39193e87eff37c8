// SPDX-License-Identifier: Apache-2.0
// What holds of any track that a reader lets through.
#pragma once

#include <cmath>

#include "base/contract.hpp"
#include "trip/geodesic.hpp"
#include "trip/simplify.hpp"
#include "trip/track.hpp"
#include "trip/trip_value.hpp"

inline void checkTrackLaws(const snugwalk::ParsedTrack &track)
{
    using namespace snugwalk;
    SNUG_ASSERT(!track.fixes.empty());
    for (const Fix &fix : track.fixes) {
        SNUG_ASSERT(isValid(fix.point));
        SNUG_ASSERT(!fix.point.altitude || std::isfinite(*fix.point.altitude));
        SNUG_ASSERT(!fix.hdop || *fix.hdop >= 0.0);
        SNUG_ASSERT(!fix.speed || fix.speed->si() >= 0.0);
        SNUG_ASSERT(parseLocal(formatInstant(fix.time)).has_value());
    }
    const TrackSummary summary = summarise(std::span<const Fix>(track.fixes));
    long long dropped = 0;
    for (const Drop &drop : summary.drops)
        dropped += drop.count;
    SNUG_ASSERT(summary.fixesRead == summary.fixesKept + dropped);
    SNUG_ASSERT(std::isfinite(summary.length.si()) && summary.inferred.si() >= 0.0);
    SNUG_ASSERT(summary.length >= summary.inferred);
    SNUG_ASSERT((summary.fixesKept > 0) == summary.first.has_value());
    SNUG_ASSERT(summary.fixesKept == 0 || *summary.start <= *summary.end);
    SNUG_ASSERT(!summary.highest || *summary.highest >= *summary.lowest);
    for (const StopOver &stop : summary.stops)
        SNUG_ASSERT(stop.from >= *summary.start && stop.to <= *summary.end && isValid(stop.place));

    const auto points = measuredPoints(track.fixes);
    double sum = 0.0;
    for (std::size_t i = 1; i < points.size(); ++i)
        sum += stepBetween(points[i - 1], points[i]).si();
    SNUG_ASSERT(std::abs(sum - summary.length.si()) <= 1e-9 * sum);

    Trip trip;
    trip.summary = summary;
    trip.outline = simplify(points, Length::fromSi(5.0), 500);
    SNUG_ASSERT(trip.outline.size() <= 500 && trip.outline.size() <= points.size());
    for (GeoPoint &point : trip.outline)
        point.accuracy.reset();
    SNUG_ASSERT(tripFromValue(toValue(trip)) == trip);
}
