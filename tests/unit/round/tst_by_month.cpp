// SPDX-License-Identifier: Apache-2.0
// Months add up to the days and trips they are made of.
#include <doctest/doctest.h>

#include <cmath>

#include "due/aging/age_line.hpp"
#include "due/aging/exposure.hpp"
#include "road/shake.hpp"
#include "round/by_month.hpp"

using namespace snugwalk;

namespace {

constexpr auto sun = static_cast<std::size_t>(AgeDriver::Sun);

AgeWeights sunClock()
{
    AgeWeights weights;
    weights.gamma[sun] = 0.5;
    return weights;
}

LocalTime at(const char *text) { return *parseLocal(text); }

Trip trip(const char *start, const char *end, double km, RoadClass road)
{
    Trip trip;
    trip.start = at(start);
    trip.end = at(end);
    trip.summary.length = kilometres(km);
    trip.road = road;
    return trip;
}

// From 20 January on, each month at a rate of its own.
RigHistory weathered(int days)
{
    RigHistory history;
    history.weathering.first = *parseDate("2026-01-20");
    for (int i = 0; i < days; ++i) {
        DayRates day;
        const unsigned month = static_cast<unsigned>(addDays(history.weathering.first, i).month());
        day.rate[sun] = {1.0 + 0.25 * month, 1.0 + 0.2 * month, 1.0 + 0.3 * month};
        day.recorded = i % 3 == 0;
        day.known = i % 10 != 0;
        history.weathering.days.push_back(day);
    }
    return history;
}

} // namespace

TEST_CASE("months of weather add up to the clock that dates go by")
{
    const RigHistory history = weathered(200);
    const LocalTime now = at("2026-08-07T12:00:00Z");
    const auto months = weatherByMonth(history, sunClock(), now);
    REQUIRE(months.size() == 8);
    CHECK(months.front().from == *parseDate("2026-01-20"));
    CHECK(months.front().days == 12);
    CHECK(months[1].days == 28);
    CHECK(months.back().until == *parseDate("2026-08-07")); // today is not over
    CHECK(months.back().days == 6);
    const Exposure exposure = exposureOf(history, forecastUsage(history, now), now);
    const AgeLine line(exposure, sunClock(), Doubt::Middle);
    double aged = 0.0;
    int days = 0;
    for (const MonthOfWeather &month : months) {
        aged += month.aged;
        days += month.days;
        CHECK(month.low <= month.aged);
        CHECK(month.high >= month.aged);
    }
    CHECK(days == 199);
    CHECK(aged == doctest::Approx(line.at(dayNumber(*parseDate("2026-08-07"))) -
                                  line.at(dayNumber(*parseDate("2026-01-20")))));
    // by hand: February has the rate 1.5, to the power of a half, over 28 days
    CHECK(months[1].aged == doctest::Approx(28.0 * std::sqrt(1.5)));
    CHECK(months[1].recorded + months[1].unknown > 0);
}

TEST_CASE("without a place there are no months of weather")
{
    CHECK(weatherByMonth(RigHistory(), sunClock(), at("2026-08-07T12:00:00Z")).empty());
}

TEST_CASE("months of road add up to the trips, and a trip over a month's end is parted by its time")
{
    RigHistory history;
    history.trips = {trip("2026-01-31T12:00:00+13:00", "2026-02-01T12:00:00+13:00", 100.0, RoadClass::Smooth),
                     trip("2026-04-10T08:00:00+13:00", "2026-04-10T12:00:00+13:00", 80.0, RoadClass::Gravel)};
    const auto months = roadByMonth(history, at("2026-05-03T00:00:00+13:00"));
    REQUIRE(months.size() == 5); // January to May
    CHECK(months[0].driven.si() == doctest::Approx(50'000.0));
    CHECK(months[1].driven.si() == doctest::Approx(50'000.0));
    CHECK(months[2].driven.si() == 0.0);
    CHECK(months[0].trips == 1);
    CHECK(months[1].trips == 0);
    const RoadHabit habit = roadHabitOf(history.trips);
    Distance equivalent;
    Distance low;
    Distance high;
    for (const MonthOfRoad &month : months) {
        equivalent = equivalent + month.equivalent;
        low = low + month.low;
        high = high + month.high;
    }
    const TripShake first = shakeOf(history.trips[0], habit);
    const TripShake second = shakeOf(history.trips[1], habit);
    CHECK(equivalent.si() == doctest::Approx(first.equivalent.si() + second.equivalent.si()));
    CHECK(low.si() == doctest::Approx(first.low.si() + second.low.si()));
    CHECK(high.si() == doctest::Approx(first.high.si() + second.high.si()));
    CHECK(months[3].equivalent.si() == doctest::Approx(second.equivalent.si()));
    CHECK(roadByMonth(RigHistory(), at("2026-05-03T00:00:00+13:00")).empty());
}
