// SPDX-License-Identifier: Apache-2.0
// Fixes that lie: each kind is left out, counted, and costs nothing but itself.
#include <limits>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "track_samples.hpp"
#include "trip/track.hpp"

using namespace snugwalk;
using namespace track_samples;

namespace {

std::vector<Fix> straight(int count)
{
    std::vector<Fix> fixes;
    for (int s = 0; s < count; ++s)
        fixes.push_back(fixAt(s, 20.0 * s));
    return fixes;
}

} // namespace

TEST_CASE("each fault has its reason and its first place")
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    std::vector<Fix> fixes = straight(200);
    const TrackSummary clean = summarise(fixes);
    fixes[20].point.accuracy = metres(25.1);
    fixes[30].hdop = 5.1;
    fixes[40].point.latitude += 1.0;
    fixes[50].point.longitude = 181.0;
    fixes[60].time = fixes[59].time;
    fixes[70].point.latitude = nan;
    fixes[80].hdop = nan;
    fixes[90].point.accuracy = metres(25.0); // at the limit, kept
    const TrackSummary summary = summarise(fixes);
    CHECK(dropped(summary.drops, "poor_accuracy") == 3);
    CHECK(firstWhere(summary.drops, "poor_accuracy") == "fix 21");
    CHECK(dropped(summary.drops, "impossible_speed") == 1);
    CHECK(firstWhere(summary.drops, "impossible_speed") == "fix 41");
    CHECK(dropped(summary.drops, "bad_position") == 2);
    CHECK(dropped(summary.drops, "time_backwards") == 1);
    CHECK(summary.fixesRead == 200);
    CHECK(summary.fixesKept == 193);
    CHECK(summary.length.si() == doctest::Approx(clean.length.si()).epsilon(1e-6));
}

TEST_CASE("60 m/s is believed, 61 is not")
{
    CHECK(summarise(std::vector<Fix>{fixAt(0, 0), fixAt(10, 599)}).fixesKept == 2);
    CHECK(summarise(std::vector<Fix>{fixAt(0, 0), fixAt(10, 611)}).fixesKept == 1);
}

TEST_CASE("a wild first fix does not cost the track")
{
    std::vector<Fix> fixes = straight(200);
    fixes[0].point = {10.0, 10.0, std::nullopt, std::nullopt};
    const TrackSummary summary = summarise(fixes);
    CHECK(summary.fixesKept == 199);
    CHECK(firstWhere(summary.drops, "impossible_speed") == "fix 1");
    CHECK(summary.length.si() == doctest::Approx(198 * 20.0).epsilon(0.001));
}

TEST_CASE("one time in the far future does not cost the rest")
{
    for (const std::size_t where : {std::size_t{0}, std::size_t{100}}) {
        std::vector<Fix> fixes = straight(200);
        fixes[where].time += std::chrono::years(70);
        const TrackSummary summary = summarise(fixes);
        CHECK(summary.fixesKept == 199);
        CHECK(dropped(summary.drops, "time_backwards") == 1);
        CHECK(summary.gaps == 0);
    }
}

TEST_CASE("a clock of whole seconds costs the doubles only")
{
    std::vector<Fix> fixes;
    for (int i = 0; i < 1000; ++i)
        fixes.push_back(fixAt(i / 10, 2.0 * i));
    const TrackSummary summary = summarise(fixes);
    CHECK(summary.fixesKept == 100);
    CHECK(dropped(summary.drops, "time_backwards") == 900);
    CHECK(summary.length.si() == doctest::Approx(1980.0).epsilon(0.001));
}

TEST_CASE("the reader's drops are told with those of the sums")
{
    ParsedTrack track;
    track.fixes = straight(20);
    track.fixes[10].point.latitude = 95.0;
    track.fixes[11].point.latitude = 95.0;
    track.drops = {{"no_time", 4, "line 3"}, {"bad_position", 2, "line 9"}};
    const TrackSummary summary = summarise(track);
    CHECK(dropped(summary.drops, "no_time") == 4);
    CHECK(dropped(summary.drops, "bad_position") == 4);
    CHECK(firstWhere(summary.drops, "bad_position") == "line 9");
}
