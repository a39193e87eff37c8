// SPDX-License-Identifier: Apache-2.0
// The table of units and how one is chosen to be shown.
#include "base/units.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr double inch = 0.0254;
constexpr double foot = 0.3048;
constexpr double mile = 1609.344;
constexpr double pound = 0.45359237;
constexpr double gravity = 9.80665;
constexpr double poundForce = pound * gravity;
constexpr double usGallon = 231.0 * inch * inch * inch;
constexpr double day = 86400.0;
constexpr double year = 365.2425 * day; // the mean of the calendar's 400 years
constexpr double degree = std::numbers::pi / 180.0;

// SI first in each dimension; a name appears once a dimension.
constexpr std::array unitTable = {
    Unit{Dimension::Length, "m", "m metre metres meter meters", 1.0},
    Unit{Dimension::Length, "mm", "mm millimetre millimetres millimeter millimeters", 1e-3},
    Unit{Dimension::Length, "cm", "cm centimetre centimetres", 1e-2},
    Unit{Dimension::Length, "in", "in inch inches \" ″", inch},
    Unit{Dimension::Length, "ft", "ft foot feet ' ′", foot},
    Unit{Dimension::Distance, "m", "m metre metres meter meters", 1.0},
    Unit{Dimension::Distance, "km", "km kilometre kilometres kilometer kilometers", 1e3},
    Unit{Dimension::Distance, "mi", "mi mile miles", mile},
    Unit{Dimension::Mass, "kg", "kg kgs kilo kilos kilogram kilograms", 1.0},
    Unit{Dimension::Mass, "g", "g gram grams", 1e-3},
    Unit{Dimension::Mass, "t", "t tonne tonnes", 1e3},
    Unit{Dimension::Mass, "lb", "lb lbs pound pounds", pound},
    Unit{Dimension::Mass, "oz", "oz ounce ounces", pound / 16.0},
    Unit{Dimension::Force, "N", "n newton newtons", 1.0},
    Unit{Dimension::Force, "kN", "kn", 1e3},
    Unit{Dimension::Force, "lbf", "lbf", poundForce},
    Unit{Dimension::Pressure, "Pa", "pa pascal pascals", 1.0},
    Unit{Dimension::Pressure, "kPa", "kpa", 1e3},
    Unit{Dimension::Pressure, "mbar", "mbar", 1e2},
    // conventional water; the gas trade reads it off a tube
    Unit{Dimension::Pressure, "inWC", "inwc inw.c. inh2o inh₂o inchwc incheswc", 2.490889e2},
    Unit{Dimension::Pressure, "bar", "bar bars", 1e5},
    Unit{Dimension::Pressure, "psi", "psi psig lbf/in²", poundForce / (inch * inch)},
    Unit{Dimension::Torque, "N·m", "n·m nm n-m n*m n.m", 1.0},
    Unit{Dimension::Torque, "lb·ft",
         "lb·ft lbf·ft ft·lb ft·lbf ft·lbs lb-ft ft-lb ft-lbs ftlb ftlbs lbft lb.ft ft.lb", poundForce *foot},
    Unit{Dimension::Torque, "lb·in", "lb·in lbf·in in·lb in·lbf in·lbs lb-in in-lb in-lbs inlb inlbs lbin",
         poundForce *inch},
    Unit{Dimension::Temperature, "K", "k kelvin", 1.0},
    Unit{Dimension::Temperature, "°C", "°c c degc celsius", 1.0, 273.15},
    Unit{Dimension::Temperature, "°F", "°f f degf fahrenheit", 5.0 / 9.0, 459.67},
    Unit{Dimension::TemperatureDifference, "K", "k kelvin", 1.0},
    Unit{Dimension::TemperatureDifference, "°C", "°c c degc", 1.0},
    Unit{Dimension::TemperatureDifference, "°F", "°f f degf", 5.0 / 9.0},
    Unit{Dimension::Speed, "m/s", "m/s", 1.0},
    Unit{Dimension::Speed, "km/h", "km/h kmh kph", 1e3 / 3600.0},
    Unit{Dimension::Speed, "mph", "mph mi/h", mile / 3600.0},
    Unit{Dimension::Speed, "kn", "kn kt knot knots", 1852.0 / 3600.0},
    Unit{Dimension::Area, "m²", "m² m2", 1.0},
    Unit{Dimension::Area, "cm²", "cm² cm2", 1e-4},
    Unit{Dimension::Area, "mm²", "mm² mm2", 1e-6},
    Unit{Dimension::Area, "in²", "in² in2", inch *inch},
    Unit{Dimension::Area, "ft²", "ft² ft2", foot *foot},
    Unit{Dimension::Volume, "m³", "m³ m3", 1.0},
    Unit{Dimension::Volume, "L", "l litre litres liter liters", 1e-3},
    Unit{Dimension::Volume, "mL", "ml millilitre millilitres", 1e-6},
    Unit{Dimension::Volume, "gal", "gal gallon gallons", usGallon},
    Unit{Dimension::Volume, "fl oz", "floz fl·oz fl.oz oz ounce ounces", usGallon / 128.0},
    Unit{Dimension::Angle, "rad", "rad radian radians", 1.0},
    Unit{Dimension::Angle, "°", "° deg degree degrees", degree},
    Unit{Dimension::Duration, "s", "s sec second seconds", 1.0},
    Unit{Dimension::Duration, "min", "min minute minutes", 60.0},
    Unit{Dimension::Duration, "h", "h hour hours", 3600.0},
    Unit{Dimension::Duration, "d", "d day days", day},
    Unit{Dimension::Duration, "y", "y yr yrs year years", year},
    Unit{Dimension::Voltage, "V", "v volt volts", 1.0},
    Unit{Dimension::Voltage, "mV", "mv", 1e-3},
    Unit{Dimension::Current, "A", "a amp amps ampere amperes", 1.0},
    Unit{Dimension::Current, "mA", "ma", 1e-3},
    Unit{Dimension::Resistance, "Ω", "ω Ω ohm ohms", 1.0},
    Unit{Dimension::Charge, "C", "c coulomb coulombs", 1.0},
    Unit{Dimension::Charge, "A·h", "a·h ah a-h a*h amph amphour amphours amp-hours", 3600.0},
    Unit{Dimension::Count, "", "", 1.0},
    Unit{Dimension::Fraction, "", "", 1.0},
    Unit{Dimension::Fraction, "%", "% percent", 0.01},
};

struct NamedDimension {
    Dimension dimension;
    std::string_view name;
};
constexpr std::array dimensionNames = {
    NamedDimension{Dimension::Length, "length"},
    NamedDimension{Dimension::Distance, "distance"},
    NamedDimension{Dimension::Mass, "mass"},
    NamedDimension{Dimension::Force, "force"},
    NamedDimension{Dimension::Pressure, "pressure"},
    NamedDimension{Dimension::Torque, "torque"},
    NamedDimension{Dimension::Temperature, "temperature"},
    NamedDimension{Dimension::TemperatureDifference, "temperature_difference"},
    NamedDimension{Dimension::Speed, "speed"},
    NamedDimension{Dimension::Area, "area"},
    NamedDimension{Dimension::Volume, "volume"},
    NamedDimension{Dimension::Angle, "angle"},
    NamedDimension{Dimension::Duration, "duration"},
    NamedDimension{Dimension::Voltage, "voltage"},
    NamedDimension{Dimension::Current, "current"},
    NamedDimension{Dimension::Resistance, "resistance"},
    NamedDimension{Dimension::Charge, "charge"},
    NamedDimension{Dimension::Count, "count"},
    NamedDimension{Dimension::Fraction, "percent"},
};

std::string_view displaySymbol(Dimension dimension, UnitSystem system, double magnitude)
{
    const bool us = system == UnitSystem::Us;
    switch (dimension) {
    case Dimension::Length:
        if (us)
            return magnitude < 2.0 * foot ? "in" : "ft";
        return magnitude < 0.5 ? "mm" : "m";
    case Dimension::Distance:
        return us ? "mi" : "km";
    case Dimension::Mass:
        if (magnitude > 0.0 && magnitude < (us ? pound : 1.0))
            return us ? "oz" : "g";
        return us ? "lb" : "kg";
    case Dimension::Force:
        return us ? "lbf" : "N";
    case Dimension::Pressure:
        return us ? "psi" : "kPa";
    case Dimension::Torque:
        return us ? "lb·ft" : "N·m";
    case Dimension::Temperature:
    case Dimension::TemperatureDifference:
        return us ? "°F" : "°C";
    case Dimension::Speed:
        return us ? "mph" : "km/h";
    case Dimension::Area:
        if (us)
            return magnitude < foot * foot ? "in²" : "ft²";
        return magnitude < 0.1 ? "cm²" : "m²";
    case Dimension::Volume:
        if (us)
            return magnitude < usGallon ? "fl oz" : "gal";
        return magnitude < 1e-3 ? "mL" : "L";
    case Dimension::Angle:
        return "°";
    case Dimension::Duration:
        if (magnitude < 2.0 * day)
            return magnitude < 7200.0 ? "min" : "h";
        return magnitude < 2.0 * year ? "d" : "y";
    case Dimension::Voltage:
        return "V";
    case Dimension::Current:
        return magnitude < 0.2 ? "mA" : "A"; // what a rig draws at rest is told in milliamperes
    case Dimension::Resistance:
        return "Ω";
    case Dimension::Charge:
        return "A·h";
    case Dimension::Count:
        return "";
    case Dimension::Fraction:
        return "%";
    }
    return "";
}

int displayDecimals(const Unit &unit, double shown)
{
    const double size = std::fabs(shown);
    if (unit.dimension == Dimension::Count || unit.symbol == "kPa" || unit.symbol == "kg" ||
        unit.symbol == "lb" || unit.symbol == "%" || unit.symbol == "mL" || unit.symbol == "mA" ||
        unit.symbol == "g")
        return 0;
    if (unit.symbol == "in")
        return 2;
    if (unit.symbol == "V" || unit.symbol == "A")
        return size < 100 ? 1 : 0;
    return size < 100 ? 1 : 0;
}

} // namespace

std::span<const Unit> allUnits() { return unitTable; }

std::optional<Unit> findUnit(Dimension dimension, std::string_view text)
{
    std::string wanted;
    for (const char c : lowerAscii(text)) {
        if (c != ' ')
            wanted += c;
    }
    for (const Unit &unit : unitTable) {
        if (unit.dimension != dimension)
            continue;
        for (const std::string_view name : split(unit.names, ' ')) {
            if (!name.empty() && name == wanted)
                return unit;
        }
    }
    return std::nullopt;
}

Unit displayUnit(Dimension dimension, UnitSystem system, double magnitudeSi)
{
    const std::string_view symbol = displaySymbol(dimension, system, std::fabs(magnitudeSi));
    const auto *found = std::find_if(unitTable.begin(), unitTable.end(), [&](const Unit &unit) {
        return unit.dimension == dimension && unit.symbol == symbol;
    });
    SNUG_ASSERT(found != unitTable.end());
    return *found;
}

std::string_view dimensionName(Dimension dimension)
{
    for (const auto &entry : dimensionNames) {
        if (entry.dimension == dimension)
            return entry.name;
    }
    return "count";
}

std::optional<Dimension> findDimension(std::string_view name)
{
    for (const auto &entry : dimensionNames) {
        if (entry.name == name)
            return entry.dimension;
    }
    return std::nullopt;
}

std::string_view siSymbol(Dimension dimension)
{
    for (const Unit &unit : unitTable) {
        if (unit.dimension == dimension)
            return unit.symbol;
    }
    return "";
}

std::string formatSi(const Unit &unit, double si, int decimals)
{
    std::string text = fixed(fromSi(unit, si), decimals);
    if (unit.symbol.empty())
        return text;
    if (unit.symbol == "°")
        return text + "°";
    return text + "\u00a0" + std::string(unit.symbol);
}

std::string formatFor(Dimension dimension, double si, UnitSystem system)
{
    const Unit unit = displayUnit(dimension, system, si);
    return formatSi(unit, si, displayDecimals(unit, fromSi(unit, si)));
}

} // namespace snugwalk
