// SPDX-License-Identifier: Apache-2.0
// Vapor pressure and dew point by [ALDUCHOV-ESKRIDGE-1996] (from memory), figures computed apart and held to
// 1e-5; [FAO-56] example 3 from memory; the sealant's window is common practice, no source.
#include <cmath>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "weather/laws/humidity.hpp"
#include "weather/laws/sealant_window.hpp"

using namespace snugwalk;

namespace {

double dew(double t, double rh) { return (dewPoint(celsius(t), rh).value() - celsius(0)).si(); }

} // namespace

TEST_CASE("saturation in hPa")
{
    const struct {
        double t, hPa;
    } rows[] = {{0, 6.1094},     {10, 12.260206}, {20, 23.334406}, {25, 31.617360},
                {30, 42.366503}, {40, 73.747168}, {-20, 1.257838}};
    for (const auto &row : rows) {
        CAPTURE(row.t);
        CHECK(std::abs(saturationPressure(celsius(row.t)).si() / 100.0 - row.hPa) <= 1e-5);
    }
}

TEST_CASE("dew points")
{
    const struct {
        double t, rh, dew;
    } rows[] = {{25, 60, 16.697664},
                {20, 50, 9.261107},
                {30, 80, 26.170903},
                {5, 90, 3.495913},
                {-10, 70, -14.435885}};
    for (const auto &row : rows) {
        CAPTURE(row.t);
        CHECK(std::abs(dew(row.t, row.rh) - row.dew) <= 1e-5);
        CHECK(relativeHumidity(celsius(row.t), celsius(row.dew)) == doctest::Approx(row.rh).epsilon(1e-6));
    }
    CHECK(dew(20, 100) == doctest::Approx(20.0).epsilon(1e-12));
    CHECK(dew(20, 104) == dew(20, 100));
}

TEST_CASE("FAO-56 example 3: 24.5 °C hold 3.075 kPa, 15 °C 1.705 kPa")
{
    CHECK(std::abs(saturationPressureFao(celsius(24.5)).si() / 1000 - 3.075) <= 0.0005);
    CHECK(std::abs(saturationPressureFao(celsius(15)).si() / 1000 - 1.705) <= 0.0005);
    CHECK(saturationPressureFao(celsius(24.5)).si() / 1000 == doctest::Approx(3.074649).epsilon(1e-6));
    CHECK(saturationPressureFao(celsius(15)).si() / 1000 == doctest::Approx(1.705346).epsilon(1e-6));
}

TEST_CASE("air that is none is refused")
{
    CHECK(dewPoint(celsius(20), 0.0).error().where == "humidity");
    CHECK(dewPoint(celsius(20), std::nan("")).error().where == "humidity");
    CHECK(dewPoint(celsius(51), 50).error().where == "temperature");
    CHECK(dewPoint(Temperature::fromSi(20), 50).error().where == "temperature");
}

// Common practice, no source: 5 to 32 °C (a guide says 4; the stricter one stands), surface 3 K above the dew
// point.
TEST_CASE("when sealant can go on")
{
    CHECK(sealantWindow(celsius(20), 50)->open());
    CHECK(sealantWindow(celsius(20), 50)->aboveDew.si() == doctest::Approx(20 - 9.261107).epsilon(1e-6));
    CHECK(sealantWindow(celsius(4.9), 50)->tooCold);
    CHECK_FALSE(sealantWindow(celsius(5.0), 50)->tooCold);
    CHECK(sealantWindow(celsius(32.1), 30)->tooHot);
    CHECK(sealantWindow(celsius(20), 90)->tooDamp);
    CHECK(
        sealantWindow(celsius(20), 60, celsius(12))->tooDamp); // a cold roof: 12 °C is the dew point at 60 %
    CHECK(sealantWindow(celsius(25), 40, celsius(55))->tooHot); // a roof in the sun
    CHECK(sealantWindow(celsius(25), 0).error().where == "humidity");
    CHECK(sealantWindow(celsius(25), 50, celsius(200)).error().where == "surface");
    CHECK(sealantHours(celsius(15), celsius(25), 50) == 24.0);
    CHECK(sealantHours(celsius(-20), celsius(-5), 50) == 0.0);
    const double part = sealantHours(celsius(0), celsius(12), 60);
    CHECK(part > 6.0);
    CHECK(part < 18.0);
}
