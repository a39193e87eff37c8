// SPDX-License-Identifier: Apache-2.0
// Months of exposure, the clock made of them, and the distance that intervals see.
#include <doctest/doctest.h>

#include <cmath>

#include "due/aging/due_lines.hpp"
#include "story.hpp"

using namespace snugwalk;
using namespace snugwalk::test;
using doctest::Approx;

namespace {

double day(std::string_view text) { return dayNumber(parseDate(text).value()); }

Weathering steady(std::string_view first, int days, std::size_t driver, RateRange rate)
{
    Weathering weather;
    weather.first = parseDate(first).value();
    DayRates one;
    one.rate[driver] = rate;
    weather.days.assign(static_cast<std::size_t>(days), one);
    return weather;
}

constexpr auto sun = static_cast<std::size_t>(AgeDriver::Sun);
constexpr auto salt = static_cast<std::size_t>(AgeDriver::Salt);
constexpr auto shake = static_cast<std::size_t>(AgeDriver::Shake);

AgeWeights only(std::size_t driver, double gamma)
{
    AgeWeights weights;
    weights.gamma[driver] = gamma;
    return weights;
}

Exposure exposureOf(const RigHistory &history, LocalTime now, const Ahead &ahead = {})
{
    return exposureOf(history, forecastUsage(history, now), now, ahead);
}

} // namespace

TEST_CASE("the two strongest drivers of a point count, in the catalogue's order")
{
    Point point;
    point.drivers = {"uses", "salt", "age", "vibration", "sun"};
    const AgeWeights weights = weightsOf(point);
    CHECK(weights.gamma[salt] == 0.5);
    CHECK(weights.gamma[shake] == 0.25);
    CHECK(weights.gamma[sun] == 0.0);
}

TEST_CASE("a rig of which nothing is known ages by the calendar")
{
    const LocalTime now = at("2026-06-10");
    const AgeLine line(exposureOf(RigHistory(), now), only(sun, 0.5), Doubt::Middle);
    CHECK(line.at(day("2027-06-10")) - line.at(day("2026-06-10")) == Approx(365.0).epsilon(1e-12));
    CHECK(line.at(day("2026-06-10")) - line.at(day("2016-06-10")) == Approx(3652.0).epsilon(1e-12));
    CHECK(line.at(day("2040-01-01")) - line.at(day("2026-06-10")) ==
          Approx(day("2040-01-01") - day("2026-06-10")).epsilon(1e-12));
}

TEST_CASE("four times the dose at half a power is twice the age")
{
    RigHistory history;
    history.weathering = steady("2026-01-01", 59, sun, {4.0, 4.0, 4.0});
    for (DayRates &month : history.weathering.usual)
        month.rate[sun] = {4.0, 4.0, 4.0};
    const Exposure exposure = exposureOf(history, at("2026-03-01"));
    const AgeLine line(exposure, only(sun, 0.5), Doubt::Middle);
    CHECK(line.at(day("2026-03-01")) - line.at(day("2026-01-01")) == Approx(118.0).epsilon(1e-12));
    const AgeLine slow(exposure, only(sun, 0.5), Doubt::Slow);
    const AgeLine fast(exposure, only(sun, 0.5), Doubt::Fast);
    CHECK(slow.at(day("2026-03-01")) - slow.at(day("2026-01-01")) ==
          Approx(59.0 * std::pow(4.0, 0.35)).epsilon(1e-12));
    CHECK(fast.at(day("2026-03-01")) - fast.at(day("2026-01-01")) ==
          Approx(59.0 * std::pow(4.0, 0.65)).epsilon(1e-12));
}

TEST_CASE("half a year at the reference and half a year at four times it, exponent 0.3")
{
    // 6 + 6 * 4^0.3 = 15.094299399 months: exponential effective age of accelerated-life models
    const double four = 6.0 + 6.0 * agingRate({RateRange{4.0, 4.0, 4.0}}, only(sun, 0.3), Doubt::Middle);
    // drivers without a weight count nothing, whatever their rate
    CHECK(four == Approx(15.094299399).epsilon(1e-9));
}

TEST_CASE("rates are held within a quarter and four times, month by month")
{
    RigHistory history;
    history.weathering = steady("2026-01-01", 31, salt, {50.0, 0.01, 90.0});
    const Exposure exposure = exposureOf(history, at("2026-02-01"));
    CHECK(exposure.known.front().rates[salt].value == 4.0);
    CHECK(exposure.known.front().rates[salt].low == 0.25);
    CHECK(exposure.known.front().rates[salt].high == 4.0);
}

TEST_CASE("a plan replaces the usual while it lasts")
{
    RigHistory history;
    const LocalTime now = at("2026-06-01");
    Ahead ahead;
    ahead.from = parseDate("2026-06-01").value();
    DayRates salty;
    salty.rate[salt] = {4.0, 4.0, 4.0};
    ahead.days.assign(30, salty);
    const AgeLine line(exposureOf(history, now, ahead), only(salt, 0.5), Doubt::Middle);
    CHECK(line.at(day("2026-07-01")) - line.at(day("2026-06-01")) == Approx(60.0).epsilon(1e-12));
    CHECK(line.at(day("2026-08-01")) - line.at(day("2026-07-01")) == Approx(31.0).epsilon(1e-12));
}

TEST_CASE("roads use up intervals at their own rate, side by side with smooth ones")
{
    // 1,200 mi at a factor of 0.4 and 1,800 at 0.8 use 3,000 + 2,250 of an interval: common practice
    Story story;
    story.trip(at("2026-01-01"), at("2026-01-02"), miles(1200)).road = RoadClass::Gravel;
    story.trip(at("2026-01-03"), at("2026-01-04"), miles(1800)).measured =
        RoadMeasure{miles(1800), 2.0, 2.6, {1.0, 1.0, 1.0}, 1.25, "rig", true, false, {}, {}};
    const RigHistory history = story.history();
    const LocalTime now = at("2026-01-10");
    const UseLine line(history, forecastUsage(history, now), now, UseCase::Likely, Roads::AsDriven);
    CHECK(line.at(day("2026-01-10")) - line.at(day("2025-12-31")) == Approx(miles(5250).si()).epsilon(1e-9));
    const UseLine smooth(history, forecastUsage(history, now), now, UseCase::Likely, Roads::Smooth);
    CHECK(smooth.at(day("2026-01-10")) == Approx(miles(3000).si()).epsilon(1e-9));
}

TEST_CASE("what is to be driven reaches a distance when the forecast says")
{
    Story story;
    story.rig().yearly = kilometres(12'000);
    const RigHistory history = story.history();
    const LocalTime now = at("2026-01-01");
    const UsageForecast usage = forecastUsage(history, now);
    for (const UseCase which : useCases) {
        const UseLine line(history, usage, now, which, Roads::AsDriven);
        const double p = which == UseCase::Much ? 0.1 : which == UseCase::Likely ? 0.5 : 0.9;
        const double days = daysToDrive(usage, kilometres(5'000), parseDate("2026-01-01").value(), p).value();
        // the forecast counts from midnight, the line from the moment: half a day at most
        CHECK(line.at(day("2026-01-01") + 0.5 + days) - line.at(day("2026-01-01") + 0.5) ==
              Approx(5e6).epsilon(1e-3));
    }
    story.rig().yearly = Distance();
    const RigHistory still = story.history();
    const UseLine none(still, forecastUsage(still, now), now, UseCase::Much, Roads::AsDriven);
    CHECK(none.at(day("2046-01-01")) == none.at(day("2026-01-01")));
}
