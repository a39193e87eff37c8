// SPDX-License-Identifier: Apache-2.0
// UV by [MADRONICH-2007] (abstract read): 12.5 μ^2.42 (Ω/300)^-1.23. Figures computed apart; the index hours
// with an adaptive quadrature of the same path, so ours (Simpson) is held to 1e-4.
#include <cmath>
#include <numbers>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "weather/laws/ultraviolet.hpp"

using namespace snugwalk;

namespace {

double indexAt(double zenithDegrees, double ozone)
{
    UvSky sky;
    sky.ozone = ozone;
    return uvIndex(std::cos(zenithDegrees * std::numbers::pi / 180.0), sky);
}

double hours(double latitude, int day) { return uvDay(latitude, day, UvSky{}).value().indexHours; }

} // namespace

TEST_CASE("the index at a moment")
{
    CHECK(indexAt(0, 300) == doctest::Approx(12.5).epsilon(1e-12));
    CHECK(indexAt(20, 300) == doctest::Approx(10.753150).epsilon(1e-6));
    CHECK(indexAt(60, 300) == doctest::Approx(2.335702).epsilon(1e-6));
    CHECK(indexAt(30, 350) == doctest::Approx(7.301121).epsilon(1e-6));
    CHECK(indexAt(30, 250) == doctest::Approx(11.044017).epsilon(1e-6));
    CHECK(indexAt(90.1, 300) == 0.0);
    CHECK(indexAt(120, 300) == 0.0);
}

TEST_CASE("index hours of a clear day")
{
    CHECK(hours(35, 172) == doctest::Approx(76.549615).epsilon(1e-4));
    CHECK(hours(35, 355) == doctest::Approx(11.980287).epsilon(1e-4));
    CHECK(hours(0, 172) == doctest::Approx(56.477945).epsilon(1e-4));
    CHECK(hours(0, 80) == doctest::Approx(69.556210).epsilon(1e-4));
    CHECK(hours(60, 172) == doctest::Approx(56.067064).epsilon(1e-4));
    CHECK(uvDay(35, 172, UvSky{})->dose == doctest::Approx(6.889465).epsilon(1e-4));
    CHECK(hours(70, 355) == 0.0);
    CHECK(hours(80, 172) > 0.0); // a day without night
}

TEST_CASE("index hours of a clear year")
{
    const struct {
        double latitude, hours;
    } rows[] = {{0, 22956.8}, {20, 20410.4}, {33.4, 16464.2}, {35, 15924.3}, {45, 12438.0}, {60, 7564.3}};
    for (const auto &row : rows) {
        CAPTURE(row.latitude);
        CHECK(365.0 * clearYearMeanUv(row.latitude) == doctest::Approx(row.hours).epsilon(1e-4));
    }
}

// Public weather-service pages, common practice: an index is 40 times the erythemal irradiance, 0.2 W/m² are
// 8; 6 % more a kilometer; clear 1, scattered 0.89, broken 0.73, overcast 0.31.
TEST_CASE("altitude and clouds")
{
    CHECK(indexOfErythemal(0.2) == doctest::Approx(8.0).epsilon(1e-12));
    CHECK(cloudShare("clear") == 1.0);
    CHECK(cloudShare("scattered") == 0.89);
    CHECK(cloudShare("broken") == 0.73);
    CHECK(cloudShare("overcast") == 0.31);
    CHECK_FALSE(cloudShare("foggy"));
    UvSky high;
    high.altitude = metres(2000);
    CHECK(uvIndex(0.5, high) == doctest::Approx(1.12 * uvIndex(0.5, UvSky{})));
    UvSky overcast;
    overcast.cloud = cloudShare("overcast").value();
    CHECK(uvDay(35, 172, overcast)->indexHours == doctest::Approx(0.31 * hours(35, 172)));
    CHECK(uvDay(35, 172, UvSky{})->noonIndex ==
          doctest::Approx(uvIndex(std::cos(35 * std::numbers::pi / 180 -
                                           0.409 * std::sin(2 * std::numbers::pi * 172 / 365 - 1.39)),
                                  UvSky{})));
    overcast.cloud = 1.5;
    CHECK(uvDay(35, 172, overcast).error().where == "cloud");
    CHECK(uvDay(95, 172, UvSky{}).error().where == "latitude");
}

TEST_CASE("ozone outside 150 to 500 is held there, so that a slip cannot blow the index up")
{
    CHECK(indexAt(30, 1) == indexAt(30, 150));
    CHECK(indexAt(30, 9000) == indexAt(30, 500));
}

// [VAN-HEUKLON-1979], constants from memory; anchors: 235 on the equator in every month by its form, and what
// climatology tables agree on to 10 %: about 280 to 300 DU at 40 north in October, 380 in April; 300 at 45
// south in April (common knowledge, no source).
TEST_CASE("ozone by place and day")
{
    for (int day = 1; day <= 366; day += 30)
        CHECK(ozoneColumn(0, 25.0, day) == doctest::Approx(235.0).epsilon(1e-12));
    CHECK(ozoneColumn(40, -105, 100) == doctest::Approx(370).epsilon(0.1));
    CHECK(ozoneColumn(40, -105, 285) == doctest::Approx(290).epsilon(0.1));
    CHECK(ozoneColumn(-45, 170, 100) == doctest::Approx(290).epsilon(0.1));
    CHECK(ozoneColumn(40, -105, 100) > ozoneColumn(40, -105, 285));
    CHECK(ozoneColumn(-45, 170, 285) > ozoneColumn(-45, 170, 100)); // spring has more in the south as well
}
