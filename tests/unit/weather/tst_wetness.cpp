// SPDX-License-Identifier: Apache-2.0
// Wet hours: the rule of [ISO-9223-1992] for an hour, classes from memory, and our expectation for a normal
// day.
#include <cmath>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "weather/laws/wetness.hpp"

using namespace snugwalk;

TEST_CASE("an hour is wet above 80 % and above 0 °C, not at them")
{
    CHECK(isWetHour(celsius(10), 80.1));
    CHECK_FALSE(isWetHour(celsius(10), 80.0));
    CHECK(isWetHour(celsius(0.1), 95));
    CHECK_FALSE(isWetHour(celsius(0.0), 95));
}

TEST_CASE("classes of a year's wet hours")
{
    const struct {
        double hours;
        int number;
    } rows[] = {{0, 1},    {10, 1},   {10.5, 2}, {250, 2},  {251, 3},
                {2500, 3}, {2501, 4}, {5500, 4}, {5501, 5}, {8784, 5}};
    for (const auto &row : rows) {
        CAPTURE(row.hours);
        CHECK(wetnessClass(row.hours).value() == row.number);
    }
    CHECK(wetnessClass(9000).error().where == "hours");
    CHECK(wetnessClass(std::nan("")).error().where == "hours");
}

TEST_CASE("expected hours: a desert has hardly any, a damp coast most, frost none")
{
    CHECK(expectedWetHours(celsius(25), celsius(41), 20) < 1.0);
    CHECK(expectedWetHours(celsius(6), celsius(10), 92) > 12.0);
    CHECK(expectedWetHours(celsius(-30), celsius(-20), 90) < 0.01);
    for (double rh = 5; rh < 95; rh += 5) // damper is never drier
        CHECK(expectedWetHours(celsius(8), celsius(18), rh) <=
              expectedWetHours(celsius(8), celsius(18), rh + 5));
    const double all = expectedWetHours(celsius(20), celsius(20), 100);
    CHECK(all <= 24.0);
    CHECK(all > 12.0);
    CHECK(std::isfinite(expectedWetHours(celsius(-80), celsius(70), 400)));
}

TEST_CASE("at 80 % all day long half of the days are wet, if it never freezes")
{
    CHECK(expectedWetHours(celsius(30), celsius(30), 80) == doctest::Approx(12.0).epsilon(1e-6));
}
