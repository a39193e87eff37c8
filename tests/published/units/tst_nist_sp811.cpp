// SPDX-License-Identifier: Apache-2.0
// Factors against [NIST-SP811] (2008), appendix B.8 "Factors for units listed alphabetically".
// The printed figures were read as others quote that table, not on NIST's own page; the two rows
// marked so are from memory. Bold in the table (here: exact) means that all further digits are zero.
#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "base/units.hpp"

using namespace snugwalk;

namespace {

struct Row {
    const char *entry; // as the table lists it
    Dimension dimension;
    const char *unit;
    double printed;
    double lastDigit; // 0: exact
};

const std::vector<Row> table = {
    {"inch (in)", Dimension::Length, "in", 2.54e-2, 0},
    {"foot (ft)", Dimension::Length, "ft", 3.048e-1, 0},
    {"mile (mi)", Dimension::Distance, "mi", 1.609344e3, 0},
    {"pound (avoirdupois) (lb)", Dimension::Mass, "lb", 4.535924e-1, 1e-7},
    {"metric ton (t)", Dimension::Mass, "t", 1.0e3, 0}, // from memory
    {"pound-force (lbf)", Dimension::Force, "lbf", 4.448222, 1e-6},
    {"pound-force per square inch (psi) (lbf/in2)", Dimension::Pressure, "psi", 6.894757e3, 1e-3},
    {"inch of water, conventional (inH2O)", Dimension::Pressure, "inWC", 2.490889e2, 1e-4},
    {"ampere hour (A h)", Dimension::Charge, "A·h", 3.6e3, 0},
    {"bar (bar)", Dimension::Pressure, "bar", 1.0e5, 0},
    {"millibar (mbar)", Dimension::Pressure, "mbar", 1.0e2, 0},
    {"pound-force foot (lbf ft)", Dimension::Torque, "lb·ft", 1.355818, 1e-6},
    {"pound-force inch (lbf in)", Dimension::Torque, "lb·in", 1.129848e-1, 1e-7},
    {"kilometer per hour (km/h)", Dimension::Speed, "km/h", 2.777778e-1, 1e-7}, // from memory
    {"mile per hour (mi/h)", Dimension::Speed, "mph", 4.4704e-1, 0},
    {"knot (nautical mile per hour)", Dimension::Speed, "kn", 5.144444e-1, 1e-7},
    {"gallon (U.S.) (gal)", Dimension::Volume, "gal", 3.785412e-3, 1e-9},
    {"ounce (U.S. fluid) (fl oz)", Dimension::Volume, "fl oz", 2.957353e-5, 1e-11},
    {"degree (angle)", Dimension::Angle, "°", 1.745329e-2, 1e-8},
    {"hour (h)", Dimension::Duration, "h", 3.6e3, 0},
    {"day (d)", Dimension::Duration, "d", 8.64e4, 0},
};

} // namespace

TEST_CASE("factors agree with the table to its last digit, exact ones exactly")
{
    for (const Row &row : table) {
        CAPTURE(std::string(row.entry));
        const auto unit = findUnit(row.dimension, row.unit);
        REQUIRE(unit);
        // an exact factor may still be one rounding away from its decimal form
        const double tolerance = row.lastDigit > 0 ? row.lastDigit / 2 : row.printed * 2.3e-16;
        CHECK(std::fabs(unit->factor - row.printed) <= tolerance);
        CHECK(unit->offset == 0.0);
    }
}

TEST_CASE("degrees: T/K = t/°C + 273.15, T/K = (t/°F + 459.67)/1.8")
{
    // Source: [NIST-SP811] B.8, degree Celsius and degree Fahrenheit (formulas from memory)
    const auto kelvin = [](double value, const char *name) {
        const auto unit = findUnit(Dimension::Temperature, name);
        REQUIRE(unit);
        return toSi(*unit, value);
    };
    CHECK(kelvin(0.0, "°C") == doctest::Approx(273.15).epsilon(1e-15));
    CHECK(kelvin(32.0, "°F") == doctest::Approx(273.15).epsilon(1e-15));
    CHECK(kelvin(212.0, "°F") == doctest::Approx(373.15).epsilon(1e-15));
    CHECK(kelvin(-40.0, "°F") == doctest::Approx(kelvin(-40.0, "°C")).epsilon(1e-15));
    CHECK(kelvin(-459.67, "°F") == 0.0);
}

TEST_CASE("the shorthands give what the table gives")
{
    CHECK(psi(1.0).si() == findUnit(Dimension::Pressure, "psi")->factor);
    CHECK(inPsi(psi(65.0)) == doctest::Approx(65.0).epsilon(1e-15));
    CHECK(miles(1.0).si() == 1609.344);
    CHECK(celsius(20.0).si() == doctest::Approx(293.15).epsilon(1e-15));
    CHECK(kilopascals(1.0).si() == 1000.0);
    CHECK(millimetres(1.0).si() == 0.001);
}
