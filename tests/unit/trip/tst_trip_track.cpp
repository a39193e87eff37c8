// SPDX-License-Identifier: Apache-2.0
// Summing up tracks made on the spot: lengths, halts, gaps, climb.
#include <cmath>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "track_samples.hpp"
#include "trip/geodesic.hpp"
#include "trip/track.hpp"

using namespace snugwalk;
using namespace track_samples;

namespace {

void drive(std::vector<Fix> &fixes, double &second, double &north, double speed, int seconds)
{
    for (int s = 0; s < seconds; ++s) {
        second += 1.0;
        north += speed;
        fixes.push_back(fixAt(second, north));
    }
}

} // namespace

TEST_CASE("nothing, one fix, two fixes")
{
    const TrackSummary none = summarise(std::span<const Fix>());
    CHECK(none == TrackSummary{});

    const std::vector<Fix> one{fixAt(0, 0, 300.0)};
    const TrackSummary single = summarise(one);
    CHECK(single.length.si() == 0.0);
    CHECK(single.fixesKept == 1);
    CHECK(single.first == single.last);
    CHECK(single.lowest == metres(300));
    CHECK(single.ascent == metres(0));

    const std::vector<Fix> two{fixAt(0, 0), fixAt(10, 100)};
    CHECK(summarise(two).length == stepBetween(two[0].point, two[1].point));
    CHECK_FALSE(summarise(two).ascent);
}

TEST_CASE("a straight drive without noise is exact to 0.1 m")
{
    std::vector<Fix> fixes{fixAt(0, 0)};
    double second = 0, north = 0;
    drive(fixes, second, north, 20.0, 1000);
    const TrackSummary summary = summarise(fixes);
    const double exact = distanceBetween(fixes.front().point, fixes.back().point).si();
    CHECK(std::abs(summary.length.si() - exact) < 0.1);
    CHECK(summary.inferred.si() == 0.0);
    CHECK(summary.gaps == 0);
    CHECK(summary.stops.empty());
    CHECK(summary.fixesKept == 1001);
    CHECK(summary.end.value() - summary.start.value() == std::chrono::seconds(1000));
}

TEST_CASE("the spacing between measured points is the larger of 10 m and three accuracies")
{
    for (const double accuracy : {1.0, 5.0, 20.0}) {
        std::vector<Fix> fixes{fixAt(0, 0)};
        double second = 0, north = 0;
        drive(fixes, second, north, 2.0, 500);
        for (Fix &fix : fixes)
            fix.point.accuracy = metres(accuracy);
        const auto points = measuredPoints(fixes);
        REQUIRE(points.size() > 5);
        double sum = 0.0;
        for (std::size_t i = 1; i < points.size(); ++i) {
            const double step = stepBetween(points[i - 1], points[i]).si();
            CHECK(step >= std::max(10.0, 3.0 * accuracy));
            sum += step;
        }
        CHECK(sum == doctest::Approx(summarise(fixes).length.si()).epsilon(1e-12));
    }
}

TEST_CASE("a halt of five minutes is told, one of four is not, and neither has length")
{
    for (const int minutesStill : {4, 6}) {
        std::vector<Fix> fixes{fixAt(0, 0)};
        double second = 0, north = 0;
        drive(fixes, second, north, 20.0, 100);
        const double there = north;
        for (int s = 0; s < minutesStill * 60; ++s) // wanders 8 m each way
            fixes.push_back(fixAt(second += 1.0, there + (s % 2 == 0 ? 8.0 : -8.0)));
        north = there;
        drive(fixes, second, north, 20.0, 100);
        const TrackSummary summary = summarise(fixes);
        CHECK(summary.length.si() == doctest::Approx(4000.0).epsilon(0.01));
        REQUIRE(summary.stops.size() == (minutesStill == 6 ? 1 : 0));
        if (!summary.stops.empty()) {
            CHECK(std::abs(distanceBetween(summary.stops[0].place, fixAt(0, there).point).si()) < 9.0);
            CHECK(summary.stops[0].to - summary.stops[0].from >= std::chrono::seconds(350));
        }
    }
}

TEST_CASE("one stray fix does not make two halts of one")
{
    std::vector<Fix> fixes;
    for (int s = 0; s < 1200; ++s)
        fixes.push_back(fixAt(s, s == 600 ? 25.0 : 0.0));
    const TrackSummary summary = summarise(fixes);
    REQUIRE(summary.stops.size() == 1);
    CHECK(summary.stops[0].to - summary.stops[0].from == std::chrono::seconds(1199));
    CHECK(summary.length.si() <= 51.0);
}

TEST_CASE("a halt across the antimeridian stays in range")
{
    std::vector<Fix> fixes;
    for (int s = 0; s < 600; ++s) {
        Fix fix = fixAt(s, 0);
        fix.point.longitude = s % 2 == 0 ? 179.99999 : -179.99999;
        fixes.push_back(fix);
    }
    const TrackSummary summary = summarise(fixes);
    REQUIRE(summary.stops.size() == 1);
    CHECK(isValid(summary.stops[0].place));
    CHECK(std::abs(std::abs(summary.stops[0].place.longitude) - 180.0) < 2e-5);
    CHECK(summary.length.si() < 1.0);
}

TEST_CASE("a gap in time or space is a straight line that is told")
{
    std::vector<Fix> fixes{fixAt(0, 0)};
    double second = 0, north = 0;
    drive(fixes, second, north, 20.0, 100);
    second += 601.0;
    north += 1500.0;
    drive(fixes, second, north, 20.0, 100); // its first fix is 1520 m on
    second += 100.0;
    north += 2500.0;
    drive(fixes, second, north, 20.0, 100);
    const TrackSummary summary = summarise(fixes);
    CHECK(summary.gaps == 2);
    CHECK(summary.inferred.si() == doctest::Approx(1520.0 + 2520.0).epsilon(0.001));
    CHECK(summary.length.si() == doctest::Approx(10'000.0).epsilon(0.001));
}

TEST_CASE("a receiver that slept through a halt tells the gap and the halt")
{
    std::vector<Fix> fixes{fixAt(0, 0)};
    double second = 0, north = 0;
    drive(fixes, second, north, 20.0, 100);
    fixes.push_back(fixAt(second += 3600.0, north + 5.0));
    drive(fixes, second, north, 20.0, 100);
    const TrackSummary summary = summarise(fixes);
    CHECK(summary.gaps == 1);
    REQUIRE(summary.stops.size() == 1);
    CHECK(summary.stops[0].to - summary.stops[0].from == std::chrono::seconds(3600));
    CHECK(summary.length.si() == doctest::Approx(4000.0).epsilon(0.001));
}

TEST_CASE("climb counts from 10 m by satellite, from 5 m by barometer")
{
    std::vector<Fix> fixes;
    for (int s = 0; s < 100; ++s)
        fixes.push_back(fixAt(s, 20.0 * s, s % 20 < 10 ? 500.0 : 507.0));
    CHECK(summarise(fixes).ascent == metres(0));
    CHECK(summarise(fixes, AltitudeSource::Barometer).ascent == metres(35));
    CHECK(summarise(fixes).lowest == metres(500));
    CHECK(summarise(fixes).highest == metres(507));
    fixes[50].point.altitude = 1e9; // no altitude on earth
    CHECK(summarise(fixes).highest == metres(507));
}
