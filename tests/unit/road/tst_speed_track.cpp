// SPDX-License-Identifier: Apache-2.0
// Speeds of a moment, from fixes with and without speeds.
#include <cmath>
#include <vector>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "road/accel/log_of_trip.hpp"
#include "road/accel/speed_track.hpp"

using namespace snugwalk;

namespace {

Fix fixAt(double seconds, double metresNorth, std::optional<Speed> speed = {})
{
    Fix fix;
    fix.time = fromMillis(static_cast<long long>(seconds * 1000));
    fix.point = {45.0 + metresNorth / 111131.7746, 7.0, {}, {}};
    fix.speed = speed;
    return fix;
}

} // namespace

TEST_CASE("between fixes the speed is their line; outside it is unknown")
{
    SpeedTrack track(std::vector{fixAt(0, 0, Speed::fromSi(10)), fixAt(5, 0, Speed::fromSi(20))});
    CHECK(track.at(0) == 10);
    CHECK(std::abs(track.at(2.5) - 15) < 1e-12);
    CHECK(track.at(5) == 20);
    CHECK(std::abs(track.at(1) - 12) < 1e-12); // back again
    CHECK(std::isnan(track.at(-1)));
    CHECK(std::isnan(track.at(5.1)));
    CHECK(std::isnan(SpeedTrack({}).at(0)));
}

TEST_CASE("receivers without speeds: steps over time, a wild one left out")
{
    SpeedTrack track(
        std::vector{fixAt(0, 0), fixAt(1, 20), fixAt(2, 40), fixAt(3, 900), fixAt(4, 920), fixAt(5, 940)});
    CHECK(std::abs(track.at(1.0) - 20) < 0.01);
    CHECK(std::abs(track.at(4.0) - 20) < 0.01);
}

TEST_CASE("more than 10 s without a fix is not known")
{
    SpeedTrack track(std::vector{fixAt(0, 0, Speed::fromSi(10)), fixAt(11, 0, Speed::fromSi(20))});
    CHECK(std::isnan(track.at(5)));
    CHECK(track.at(11) == 20);
}

TEST_CASE("halts are no driving, and a log of another time is none of this trip's")
{
    Trip trip;
    trip.start = {fromMillis(1'000'000), {}};
    trip.end = {fromMillis(1'000'000 + 7'200'000), {}}; // two hours, one of them at a halt
    trip.summary.length = kilometres(72);
    CHECK(movingSpeed(trip) == 10.0);
    trip.summary.stops.push_back({fromMillis(2'000'000), fromMillis(5'600'000), {}});
    CHECK(movingSpeed(trip) == 20.0);
    CHECK(movingSpeed(Trip{}) == 0.0);
    CHECK(checkLogTime(trip, 1000, 8200));
    CHECK(checkLogTime(trip, 941, 8259));
    CHECK(!checkLogTime(trip, 939, 8200));
    CHECK(!checkLogTime(trip, 1000, 8261));
}
