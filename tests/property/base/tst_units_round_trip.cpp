// SPDX-License-Identifier: Apache-2.0
// Whatever is shown can be typed again and means the same, to half a unit of the last digit shown.
#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "base/units.hpp"

using namespace snugwalk;

namespace {

bool hasOwnSymbol(const Unit &unit)
{
    return !unit.symbol.empty(); // a plain fraction is never shown as such, a count has no unit
}

} // namespace

TEST_CASE("format then parse, every unit, random values and digits")
{
    std::mt19937_64 rng(811); // fixed: a failure must be repeatable
    std::uniform_real_distribution<double> exponent(-3.0, 5.0);
    std::uniform_int_distribution<int> digits(0, 6);
    for (const Unit &unit : allUnits()) {
        if (!hasOwnSymbol(unit))
            continue;
        for (int i = 0; i < 500; ++i) {
            const double magnitude = std::pow(10.0, exponent(rng));
            const bool negative = unit.dimension != Dimension::Temperature && i % 2 == 1;
            const double shown = negative ? -magnitude : magnitude;
            const int decimals = digits(rng);
            const std::string text = formatSi(unit, toSi(unit, shown), decimals);
            CAPTURE(text);
            const auto si = parseSi(unit.dimension, text);
            REQUIRE(si.has_value());
            const double half = 0.5 * std::pow(10.0, -decimals);
            CHECK(std::fabs(fromSi(unit, *si) - shown) <= half * (1 + 1e-9) + std::fabs(shown) * 1e-12);
        }
    }
}

TEST_CASE("the text shown by default is understood, and showing it again changes nothing")
{
    std::mt19937_64 rng(65);
    std::uniform_real_distribution<double> exponent(-4.0, 5.0);
    for (const Unit &unit : allUnits()) {
        if (!hasOwnSymbol(unit))
            continue;
        for (int i = 0; i < 200; ++i) {
            const double si = toSi(unit, std::pow(10.0, exponent(rng)));
            if (unit.dimension == Dimension::Temperature && si < 1.0)
                continue; // shown in whole degrees it would round to below absolute zero
            for (const UnitSystem system : {UnitSystem::Si, UnitSystem::Us}) {
                const std::string text = formatFor(unit.dimension, si, system);
                CAPTURE(text);
                CHECK(parseSi(unit.dimension, text).has_value());
            }
        }
    }
}

TEST_CASE("into a unit and out of it loses nothing worth a digit")
{
    std::mt19937_64 rng(6894);
    std::uniform_real_distribution<double> value(-1e6, 1e6);
    for (const Unit &unit : allUnits()) {
        for (int i = 0; i < 200; ++i) {
            const double v = value(rng);
            CAPTURE(std::string(unit.symbol));
            CHECK(std::fabs(fromSi(unit, toSi(unit, v)) - v) <= 1e-9);
        }
    }
}
