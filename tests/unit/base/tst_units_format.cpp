// SPDX-License-Identifier: Apache-2.0
// How quantities are shown, and the table of units itself.
#include <doctest/doctest.h>

#include <set>
#include <string>

#include "base/text.hpp"
#include "base/units.hpp"

using namespace snugwalk;

namespace {

constexpr auto us = UnitSystem::Us;
constexpr auto metric = UnitSystem::Si;

} // namespace

TEST_CASE("shown with a unit at arm's length, a no-break space before it")
{
    CHECK(format(psi(65.0), us) == "65.0\u00a0psi");
    CHECK(format(psi(65.0), metric) == "448\u00a0kPa");
    CHECK(format(millimetres(2.4), metric) == "2.4\u00a0mm");
    CHECK(format(millimetres(2.38125), us) == "0.09\u00a0in");
    CHECK(format(metres(7.2), metric) == "7.2\u00a0m");
    CHECK(format(metres(7.2), us) == "23.6\u00a0ft");
    CHECK(format(kilograms(3175.1), us) == "7000\u00a0lb");
    CHECK(format(celsius(-10.0), metric) == "-10.0\u00a0°C");
    CHECK(format(celsius(-10.0), us) == "14.0\u00a0°F");
    CHECK(format(kilometres(402.336), us) == "250\u00a0mi");
    CHECK(format(Torque::fromSi(162.7), us) == "120\u00a0lb·ft");
    CHECK(formatFor(Dimension::Fraction, 0.18, metric) == "18\u00a0%");
    CHECK(formatFor(Dimension::Count, 6.0, us) == "6");
    CHECK(format(Angle::fromSi(3.141592653589793), metric) == "180°");
}

TEST_CASE("a difference of temperature is no point on the scale")
{
    CHECK(format(TemperatureDifference::fromSi(10.0), us) == "18.0\u00a0°F");
    CHECK(format(TemperatureDifference::fromSi(10.0), metric) == "10.0\u00a0°C");
}

TEST_CASE("each spelling means one unit of its dimension")
{
    std::set<std::string> seen;
    for (const Unit &unit : allUnits()) {
        CHECK(unit.factor > 0.0);
        for (const std::string_view name : split(unit.names, ' ')) {
            const std::string key = std::string(dimensionName(unit.dimension)) + " " + std::string(name);
            CAPTURE(key);
            if (name.empty())
                continue;
            CHECK(seen.insert(key).second);
            CHECK(name == lowerAscii(name));
            const auto found = findUnit(unit.dimension, name);
            REQUIRE(found);
            CHECK(found->symbol == unit.symbol);
        }
    }
    CHECK(seen.size() > 100);
}

TEST_CASE("what is printed can be typed")
{
    for (const Unit &unit : allUnits()) {
        if (unit.symbol.empty())
            continue;
        CAPTURE(std::string(unit.symbol));
        const auto found = findUnit(unit.dimension, unit.symbol);
        REQUIRE(found);
        CHECK(found->symbol == unit.symbol);
    }
}

TEST_CASE("the first unit of each dimension is SI, and names lead back to the dimension")
{
    std::set<Dimension> seen;
    for (const Unit &unit : allUnits()) {
        CAPTURE(std::string(unit.symbol));
        if (seen.insert(unit.dimension).second) {
            CHECK(unit.factor == 1.0);
            CHECK(unit.offset == 0.0);
            CHECK(siSymbol(unit.dimension) == unit.symbol);
        }
        CHECK(findDimension(dimensionName(unit.dimension)) == unit.dimension);
    }
    CHECK(seen.size() == 19);
    CHECK(formatFor(Dimension::Current, 0.05, UnitSystem::Si) == "50\u00a0mA");
    CHECK(formatFor(Dimension::Duration, 47 * 3600.0, UnitSystem::Us) == "47.0\u00a0h");
    CHECK(formatFor(Dimension::Duration, 5.4 * 86400.0, UnitSystem::Us) == "5.4\u00a0d");
    CHECK(formatFor(Dimension::Duration, 10 * 365.2425 * 86400.0, UnitSystem::Si) == "10.0\u00a0y");
    CHECK(formatFor(Dimension::Charge, 360000.0, UnitSystem::Us) == "100\u00a0A·h");
    CHECK_FALSE(findDimension("colour"));
}

TEST_CASE("every dimension has something to show in both systems")
{
    for (const Unit &unit : allUnits()) {
        for (const double size : {0.0, 1e-6, 1.0, -1.0, 1e6}) {
            CAPTURE(size);
            CHECK(displayUnit(unit.dimension, us, size).dimension == unit.dimension);
            CHECK(displayUnit(unit.dimension, metric, size).dimension == unit.dimension);
        }
    }
}
