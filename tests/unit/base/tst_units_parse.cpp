// SPDX-License-Identifier: Apache-2.0
// What people type is understood in full or refused with a way out.
#include <doctest/doctest.h>

#include <vector>

#include "base/units.hpp"

using namespace snugwalk;

namespace {

// si: worked out by hand from the definitions (inch 25.4 mm, pound 0.45359237 kg, standard gravity
// 9.80665 m/s², US gallon 231 in³), see tests/published/units for the factors themselves.
struct Typed {
    Dimension dimension;
    const char *text;
    double si;
};

constexpr double psiPa = 6894.757293168361;
constexpr double lbFt = 1.3558179483314004;
constexpr double lbIn = 0.1129848290276167;

const std::vector<Typed> understood = {
    {Dimension::Pressure, "65 psi", 65 * psiPa},
    {Dimension::Pressure, "65psi", 65 * psiPa},
    {Dimension::Pressure, "  65 PSI ", 65 * psiPa},
    {Dimension::Pressure, "65.5 psig", 65.5 * psiPa},
    {Dimension::Pressure, "4.5 bar", 450000.0},
    {Dimension::Pressure, "4,5 bar", 450000.0},
    {Dimension::Pressure, "0,500 bar", 50000.0},
    {Dimension::Pressure, "450 kPa", 450000.0},
    {Dimension::Pressure, "+450 kPa", 450000.0},
    {Dimension::Torque, "100 lb·ft", 100 * lbFt},
    {Dimension::Torque, "100 lb\u22c5ft", 100 * lbFt},
    {Dimension::Torque, "100 lbf·ft", 100 * lbFt},
    {Dimension::Torque, "100 ft-lb", 100 * lbFt},
    {Dimension::Torque, "100 ft-lbs", 100 * lbFt},
    {Dimension::Torque, "100 ft lbs", 100 * lbFt},
    {Dimension::Torque, "100 lb-ft", 100 * lbFt},
    {Dimension::Torque, "100 lb ft", 100 * lbFt},
    {Dimension::Torque, "50 in-lb", 50 * lbIn},
    {Dimension::Torque, "50 in-lbs", 50 * lbIn},
    {Dimension::Torque, "120 N·m", 120.0},
    {Dimension::Torque, "120 Nm", 120.0},
    {Dimension::Torque, "120 N m", 120.0},
    {Dimension::Length, "1/4 in", 0.00635},
    {Dimension::Length, "1/4\"", 0.00635},
    {Dimension::Length, "3/32", 0.00238125},
    {Dimension::Length, "3\u204432", 0.00238125},
    {Dimension::Length, "2 1/2 in", 0.0635},
    {Dimension::Length, "2½ in", 0.0635},
    {Dimension::Length, "½ in", 0.0127},
    {Dimension::Length, "-1/4 in", -0.00635},
    {Dimension::Length, "-2 1/2 in", -0.0635},
    {Dimension::Length, "-0 1/2 in", -0.0127},
    {Dimension::Length, "24 ft", 7.3152},
    {Dimension::Length, "7.3 m", 7.3},
    {Dimension::Length, "4 mm", 0.004},
    {Dimension::Mass, "1,060 kg", 1060.0},
    {Dimension::Mass, "1,060.5 kg", 1060.5},
    {Dimension::Mass, "12,345,678 kg", 12345678.0},
    {Dimension::Mass, "1060 kgs", 1060.0},
    {Dimension::Mass, "7,000 lb", 3175.14659},
    {Dimension::Mass, "1.2 t", 1200.0},
    {Dimension::Temperature, "\u221210 °C", 263.15},
    {Dimension::Temperature, "-10 C", 263.15},
    {Dimension::Temperature, "-10\u00a0°C", 263.15},
    {Dimension::Temperature, "20 ºC", 293.15}, // the ordinal mark of a Spanish keyboard
    {Dimension::Temperature, "14 F", 263.15},
    {Dimension::Temperature, "14°F", 263.15},
    {Dimension::Temperature, "300 K", 300.0},
    {Dimension::TemperatureDifference, "18 °F", 10.0},
    {Dimension::Distance, "250 mi", 402336.0},
    {Dimension::Distance, "402.336 km", 402336.0},
    {Dimension::Speed, "90 km/h", 25.0},
    {Dimension::Speed, "20 kn", 10.288888888888889},
    {Dimension::Volume, "20 gal", 0.07570823568},
    {Dimension::Volume, "20 fl oz", 0.00059147059125},
    {Dimension::Volume, "40 L", 0.04},
    {Dimension::Area, "20 cm2", 0.002},
    {Dimension::Area, "1 ft²", 0.09290304},
    {Dimension::Angle, "180°", 3.141592653589793},
    {Dimension::Duration, "1.5 h", 5400.0},
    {Dimension::Voltage, "12.6 V", 12.6},
    {Dimension::Current, "150 mA", 0.15},
    {Dimension::Resistance, "3.2 ohm", 3.2},
    {Dimension::Resistance, "3.2 Ω", 3.2},
    {Dimension::Charge, "100 Ah", 360000.0},
    {Dimension::Charge, "5 A·h", 18000.0},
    {Dimension::Pressure, "9 in WC", 9 * 249.0889},
    {Dimension::Pressure, "11 inH2O", 11 * 249.0889},
    {Dimension::Volume, "10.1 oz", 10.1 * 2.95735295625e-5},
    {Dimension::Force, "10 lbf", 44.4822161526050},
    {Dimension::Count, "6", 6.0},
    {Dimension::Fraction, "18 %", 0.18},
    {Dimension::Fraction, "18", 0.18},
};

struct Refused {
    Dimension dimension;
    std::string text;
    Errc code;
};

const std::vector<Refused> refused = {
    {Dimension::Pressure, "", Errc::InvalidInput},
    {Dimension::Pressure, "   ", Errc::InvalidInput},
    {Dimension::Pressure, "psi", Errc::InvalidInput},
    {Dimension::Pressure, "65", Errc::InvalidInput}, // of what?
    {Dimension::Pressure, "65 kg", Errc::InvalidInput},
    {Dimension::Pressure, "65 psi 3", Errc::InvalidInput},
    {Dimension::Pressure, "65 66 psi", Errc::InvalidInput},
    {Dimension::Pressure, "65-70 psi", Errc::InvalidInput},
    {Dimension::Pressure, "+-65 psi", Errc::InvalidInput},
    {Dimension::Pressure, "nan", Errc::InvalidInput},
    {Dimension::Pressure, "nan psi", Errc::InvalidInput},
    {Dimension::Pressure, "inf psi", Errc::InvalidInput},
    {Dimension::Pressure, "1e999", Errc::InvalidInput},
    {Dimension::Pressure, "1e999 psi", Errc::InvalidInput},
    {Dimension::Pressure, "1.2.3 psi", Errc::InvalidInput},
    {Dimension::Pressure, "1,2,3 bar", Errc::InvalidInput},
    {Dimension::Pressure, "1.060,5 bar", Errc::InvalidInput}, // which one is the decimal mark?
    {Dimension::Pressure, std::string("65\0psi", 6), Errc::InvalidInput},
    {Dimension::Pressure, "65 \xff\xfe", Errc::InvalidInput},
    {Dimension::Pressure, std::string(300, '6'), Errc::InvalidInput},
    {Dimension::Pressure, std::string(300, ' ') + "65 psi", Errc::InvalidInput},
    {Dimension::Length, "1/0 in", Errc::InvalidInput},
    {Dimension::Length, "1/-4 in", Errc::InvalidInput},
    {Dimension::Length, "1/2/3 in", Errc::InvalidInput},
    {Dimension::Length, "1 -1/2 in", Errc::InvalidInput},
    {Dimension::Length, "0 -1/2 in", Errc::InvalidInput},
    {Dimension::Length, "/4 in", Errc::InvalidInput},
    {Dimension::Length, "1.5/4 in", Errc::InvalidInput},
    {Dimension::Length, "5 lb", Errc::InvalidInput},
    {Dimension::Mass, "1,06 0 kg", Errc::InvalidInput},
    {Dimension::Temperature, "-300 °C", Errc::OutOfRange},
    {Dimension::Temperature, "-460 F", Errc::OutOfRange},
    {Dimension::Temperature, "-1 K", Errc::OutOfRange},
};

} // namespace

TEST_CASE("what people type is understood")
{
    for (const Typed &typed : understood) {
        CAPTURE(std::string(typed.text));
        const auto si = parseSi(typed.dimension, typed.text);
        REQUIRE(si.has_value());
        CHECK(*si == doctest::Approx(typed.si).epsilon(1e-12));
    }
}

TEST_CASE("what cannot be understood in full is refused with the text and an example")
{
    for (const Refused &typed : refused) {
        CAPTURE(std::string(typed.text));
        const auto si = parseSi(typed.dimension, typed.text);
        REQUIRE_FALSE(si.has_value());
        CHECK(si.error().code == typed.code);
        CHECK_FALSE(si.error().what.empty());
        CHECK_FALSE(si.error().act.empty());
        CHECK(si.error().where.size() < 300);
    }
}

TEST_CASE("the refusal names units that would have been understood")
{
    const auto si = parseSi(Dimension::Pressure, "65 kg");
    REQUIRE_FALSE(si.has_value());
    CHECK(si.error().what == "not a pressure");
    CHECK(si.error().where == "\"65 kg\"");
    CHECK(si.error().act.find("\"12 psi\"") != std::string::npos);
    CHECK(si.error().act.find("\"12 bar\"") != std::string::npos);
}

TEST_CASE("a bare number takes the unit that the screen shows, a bare fraction of a length is inches")
{
    const auto psiUnit = findUnit(Dimension::Pressure, "psi");
    const auto mmUnit = findUnit(Dimension::Length, "mm");
    REQUIRE(psiUnit);
    REQUIRE(mmUnit);
    CHECK(*parseSi(Dimension::Pressure, "65", psiUnit) == doctest::Approx(65 * psiPa));
    CHECK(*parseSi(Dimension::Pressure, "4.5 bar", psiUnit) == doctest::Approx(450000.0));
    CHECK(*parseSi(Dimension::Length, "3", mmUnit) == doctest::Approx(0.003));
    CHECK(*parseSi(Dimension::Length, "3/32", mmUnit) == doctest::Approx(0.00238125));
}

TEST_CASE("the typed reading carries its dimension")
{
    const Result<Torque> torque = parseQuantity<Torque>("100 lb·ft");
    REQUIRE(torque.has_value());
    CHECK(torque->si() == doctest::Approx(100 * lbFt));
    CHECK(parseQuantity<Pressure>("100 lb·ft").error().code == Errc::InvalidInput);
}
