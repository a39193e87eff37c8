// SPDX-License-Identifier: Apache-2.0
// What a trip did: days of weather counted from date to date, aged by the seal's own clock.
#include <doctest/doctest.h>

#include <cmath>

#include "round/trip_story.hpp"

using namespace snugwalk;

namespace {

constexpr std::size_t sun = static_cast<std::size_t>(AgeDriver::Sun);
constexpr std::size_t heat = static_cast<std::size_t>(AgeDriver::Heat);
constexpr std::size_t shake = static_cast<std::size_t>(AgeDriver::Shake);

// Half a power of sun, a quarter of heat: the clock of a seal. Common practice, no source.
AgeWeights sealClock()
{
    AgeWeights weights;
    weights.gamma[sun] = 0.5;
    weights.gamma[heat] = 0.25;
    return weights;
}

LocalTime at(const char *text) { return *parseLocal(text); }

// Ten days from 1 January on, each `rate` of sun, the rest as the reference.
RigHistory sunny(double rate)
{
    RigHistory history;
    history.weathering.first = *parseDate("2027-01-01");
    DayRates day;
    day.rate[sun] = {rate, rate, rate};
    history.weathering.days.assign(10, day);
    return history;
}

Trip trip(const char *start, const char *end)
{
    Trip trip;
    trip.start = at(start);
    trip.end = at(end);
    trip.summary.length = kilometres(100.0);
    return trip;
}

} // namespace

TEST_CASE("days are those of the calendar where the rig was")
{
    const RigHistory history = sunny(1.0);
    // an hour past midnight there, the day before in UTC
    CHECK(tripStory(history, trip("2027-01-02T01:00:00+13:00", "2027-01-02T02:00:00+13:00"), sealClock())
              .days == 1);
    CHECK(tripStory(history, trip("2027-01-02T23:00:00+13:00", "2027-01-03T01:00:00+13:00"), sealClock())
              .days == 2);
    CHECK(tripStory(history, trip("2027-01-02T08:00:00Z", "2027-01-10T17:00:00Z"), sealClock()).days == 9);
}

TEST_CASE("the reference ages it day for day, four times the sun twice as fast")
{
    const Trip nine = trip("2027-01-02T08:00:00Z", "2027-01-10T17:00:00Z");
    const TripStory plain = tripStory(sunny(1.0), nine, sealClock());
    CHECK(plain.weatherKnown);
    CHECK(plain.aged == doctest::Approx(9.0));
    const TripStory hot = tripStory(sunny(4.0), nine, sealClock());
    CHECK(hot.aged == doctest::Approx(9.0 * std::pow(4.0, 0.5)));
    CHECK(hot.agedLow <= hot.aged);
    CHECK(hot.aged <= hot.agedHigh);
    // as in the due clock, a rate over 4 counts as 4
    CHECK(tripStory(sunny(40.0), nine, sealClock()).aged == doctest::Approx(hot.aged));
}

TEST_CASE("one day that is not known leaves the weather untold")
{
    RigHistory history = sunny(2.0);
    const Trip nine = trip("2027-01-02T08:00:00Z", "2027-01-10T17:00:00Z");
    CHECK_FALSE(
        tripStory(history, trip("2027-01-09T08:00:00Z", "2027-01-12T17:00:00Z"), sealClock()).weatherKnown);
    CHECK_FALSE(
        tripStory(history, trip("2026-12-31T08:00:00Z", "2027-01-02T17:00:00Z"), sealClock()).weatherKnown);
    history.weathering.days[4].known = false;
    CHECK_FALSE(tripStory(history, nine, sealClock()).weatherKnown);
    CHECK_FALSE(tripStory(RigHistory(), nine, sealClock()).weatherKnown);
}

TEST_CASE("the road is told as shake and never a second time as aging")
{
    const Trip day = trip("2027-01-02T08:00:00Z", "2027-01-02T17:00:00Z");
    AgeWeights both = sealClock();
    both.gamma[shake] = 0.5;
    const TripStory story = tripStory(sunny(2.0), day, both);
    CHECK(story.aged == doctest::Approx(tripStory(sunny(2.0), day, sealClock()).aged));
    CHECK(story.shake.driven.si() == doctest::Approx(100'000.0));
    CHECK(story.shake.low <= story.shake.equivalent);
    CHECK(story.shake.equivalent <= story.shake.high);
}
