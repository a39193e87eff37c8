// SPDX-License-Identifier: Apache-2.0
// Four functions of one form.
#include "weather/laws/corrosion.hpp"

#include <algorithm>
#include <cmath>

#include "base/units.hpp"

namespace snugwalk {
namespace {

struct Law {
    std::string_view name;
    double sulfur, sulfurPower, sulfurHumidity;                     // a, b, c
    double cool, warm;                                              // k, l
    double chloride, chloridePower, chlorideHumidity, chlorideHeat; // d, e, g, h
    std::array<double, 6> bounds;
    double low, high; // of the estimate, as factors
    double growth;
    std::string_view unit;
};

constexpr std::array laws = {
    Law{"steel",
        1.77,
        .52,
        .020,
        .150,
        .054,
        .102,
        .62,
        .033,
        .040,
        {1.3, 25, 50, 80, 200, 700},
        .67,
        1.5,
        .523,
        "µm/a"},
    Law{"zinc",
        .0129,
        .44,
        .046,
        .038,
        .071,
        .0175,
        .57,
        .008,
        .085,
        {.1, .7, 2.1, 4.2, 8.4, 25},
        .67,
        1.5,
        .813,
        "µm/a"},
    Law{"copper",
        .0053,
        .26,
        .059,
        .126,
        .080,
        .01025,
        .27,
        .036,
        .049,
        {.1, .6, 1.3, 2.8, 5.6, 10},
        .67,
        1.5,
        .667,
        "µm/a"},
    Law{"aluminium",
        .0042,
        .73,
        .025,
        .009,
        .043,
        .0018,
        .60,
        .020,
        .094,
        {0, .6, 2, 5, 10, 10},
        .5,
        2.0,
        .728,
        "g/(m² a)"},
};

constexpr auto categoryNames = std::to_array<std::string_view>({"C1", "C2", "C3", "C4", "C5", "CX"});

struct Span {
    double low, high;
};
constexpr Span tableTemperature{-17.0, 29.0};
constexpr Span tableHumidity{34.0, 93.0};
constexpr Span tableSulfur{0.7, 150.0};
constexpr Span tableChloride{0.4, 760.0};
constexpr double nearBound = 1.5;
constexpr double hotCoastCelsius = 20.0;
constexpr double hotCoastChloride = 60.0;

const Law &lawOf(Metal metal) { return laws.at(static_cast<std::size_t>(metal)); }

bool within(Span span, double v) { return v >= span.low && v <= span.high; }

double powerOrNothing(double base, double exponent) { return base > 0.0 ? std::pow(base, exponent) : 0.0; }

double firstYearLoss(const Law &law, double t, const CorrosiveAir &air)
{
    const double humidity = std::clamp(air.humidity, tableHumidity.low, tableHumidity.high);
    const double f = (t <= 10.0 ? law.cool : -law.warm) * (t - 10.0);
    const double sulfur = std::min(air.sulfur, tableSulfur.high);
    const double chloride = std::min(air.chloride, tableChloride.high);
    return law.sulfur * powerOrNothing(sulfur, law.sulfurPower) *
               std::exp(law.sulfurHumidity * humidity + f) +
           law.chloride * powerOrNothing(chloride, law.chloridePower) *
               std::exp(law.chlorideHumidity * humidity + law.chlorideHeat * t);
}

bool isAir(double celsiusValue, const CorrosiveAir &air)
{
    return celsiusValue >= -60.0 && celsiusValue <= 60.0 && air.humidity > 0.0 && air.humidity <= 100.0 &&
           air.sulfur >= 0.0 && air.sulfur <= 10'000.0 && air.chloride >= 0.0 && air.chloride <= 10'000.0;
}

} // namespace

std::string_view metalName(Metal metal) { return lawOf(metal).name; }

std::string_view corrosivityName(Corrosivity category)
{
    return categoryNames.at(static_cast<std::size_t>(category));
}

Corrosivity corrosivityOf(Metal metal, double firstYear)
{
    for (std::size_t i = 0; i + 1 < categoryNames.size(); ++i) {
        if (firstYear <= lawOf(metal).bounds.at(i))
            return static_cast<Corrosivity>(i);
    }
    return Corrosivity::CX;
}

Result<CorrosionRate> corrosionRate(Metal metal, const CorrosiveAir &air)
{
    const double given = (air.temperature - celsius(0.0)).si();
    if (!isAir(given, air))
        return Error{
            Errc::OutOfRange, "no air is like that", "air",
            "give °C (-60 to 60), humidity in % (above 0, at most 100), SO2 and chloride in mg/(m² d)"};
    const Law &law = lawOf(metal);
    const double t = std::clamp(given, tableTemperature.low, tableTemperature.high);
    CorrosionRate out;
    Estimate &rate = out.firstYear;
    rate.value = firstYearLoss(law, t, air);
    rate.low = rate.value * law.low;
    rate.high = rate.value * law.high;
    rate.unit = law.unit;
    rate.basis = "published";
    rate.source = "ISO-9223-2012";
    if (!within(tableTemperature, given) || !within(tableHumidity, air.humidity) ||
        !within(tableSulfur, air.sulfur) || !within(tableChloride, air.chloride))
        rate.warnings.emplace_back("outside_table");
    if (given >= hotCoastCelsius && air.chloride >= hotCoastChloride)
        rate.warnings.emplace_back("hot_coast");
    out.category = corrosivityOf(metal, rate.value);
    out.lowest = corrosivityOf(metal, rate.value / nearBound);
    out.highest = corrosivityOf(metal, rate.value * nearBound);
    return out;
}

Result<double> corrosionAfter(Metal metal, double firstYear, double years)
{
    if (!(firstYear >= 0.0) || !std::isfinite(firstYear))
        return Error{Errc::OutOfRange, "no such loss in a year", "rate", "give 0 or more"};
    if (!(years >= 0.0 && years <= 20.0))
        return Error{Errc::OutOfRange, "the growth law holds for 20 years", "years", "give 0 to 20"};
    return firstYear * std::pow(years, lawOf(metal).growth);
}

Estimate chlorideNearCoast(Distance fromCoast)
{
    const double tens = std::max(1.0, fromCoast.si() / 10.0);
    const auto law = [&](double surf, double power, double inland) {
        return std::clamp(std::max(surf * std::pow(tens, -power), inland), tableChloride.low,
                          tableChloride.high);
    };
    Estimate chloride;
    chloride.value = law(600.0, 0.8, 2.0);
    chloride.low = law(300.0, 1.0, 1.0);
    chloride.high = law(1500.0, 0.6, 3.0);
    chloride.unit = "mg/(m² d)";
    chloride.basis = "common_practice";
    chloride.source = "FELIU-1999";
    return chloride;
}

} // namespace snugwalk
