// SPDX-License-Identifier: Apache-2.0
// Any bytes as GPX: an error with advice, or a track that keeps the laws.
#include "fuzz.hpp"
#include "track_laws.hpp"
#include "trip/gpx.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const auto track = snugwalk::parseGpx(asText(data, size));
    if (track)
        checkTrackLaws(*track);
    else
        SNUG_ASSERT(!track.error().what.empty() && !track.error().act.empty());
    return 0;
}
