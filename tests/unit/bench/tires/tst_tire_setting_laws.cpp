// SPDX-License-Identifier: Apache-2.0
// Laws of the gas and of the setting over seeded random input.
#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "base/units.hpp"
#include "bench/tires/tire_pressure.hpp"

using namespace snugwalk;

namespace {

struct Draw {
    std::mt19937 rng{20261124};
    double between(double a, double b) { return std::uniform_real_distribution<double>(a, b)(rng); }
    TirePlace place() { return {celsius(between(-40, 90)), metres(between(-500, 4500))}; }
    Pressure pressure() { return psi(between(20, 110)); }
};

} // namespace

TEST_CASE("the setting is never under the placard nor over the maximum")
{
    Draw draw;
    for (int i = 0; i < 20'000; ++i) {
        TireSetting s{draw.pressure(), std::nullopt, draw.place(), draw.place()};
        if (i % 2 == 0)
            s.maximum = s.placard + psi(draw.between(0, 30));
        const auto e = pressureToSet(s);
        REQUIRE(e);
        CAPTURE(i);
        CHECK(e->value >= s.placard.si());
        CHECK(e->low >= s.placard.si());
        CHECK(e->low <= e->value);
        CHECK(e->value <= e->high);
        if (s.maximum)
            CHECK(e->high <= s.maximum->si());
    }
}

TEST_CASE("there and back gives the same pressure; warmer and higher never show less")
{
    Draw draw;
    for (int i = 0; i < 20'000; ++i) {
        const TirePlace from = draw.place();
        const TirePlace to = draw.place();
        const Pressure start = draw.pressure();
        const auto there = pressureElsewhere(start, from, to);
        REQUIRE(there);
        CAPTURE(i);
        if (*there > Pressure() && *there <= Pressure::fromSi(1e6))
            CHECK(pressureElsewhere(*there, to, from)->si() == doctest::Approx(start.si()).epsilon(1e-12));
        TirePlace warmer = to;
        warmer.tire = std::min(celsius(90), to.tire + TemperatureDifference::fromSi(5));
        CHECK(pressureElsewhere(start, from, warmer)->si() >= there->si());
        TirePlace higher = to;
        higher.altitude = to.altitude + metres(100);
        CHECK(pressureElsewhere(start, from, higher)->si() >= there->si());
    }
}
