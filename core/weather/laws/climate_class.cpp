// SPDX-License-Identifier: Apache-2.0
// Rules over twelve months.
#include "weather/laws/climate_class.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string_view>

namespace snugwalk {
namespace {

// Months of a half year, from October on.
constexpr std::array southern = {9, 10, 11, 0, 1, 2};
constexpr std::array northern = {3, 4, 5, 6, 7, 8};

struct HalfYear {
    double temperature = 0.0;
    double rain = 0.0;
    double driest = 1e9;
    double wettest = 0.0;
};

HalfYear halfYear(const ClimateMonths &m, const std::array<int, 6> &which)
{
    HalfYear half;
    for (const int month : which) {
        const auto i = static_cast<std::size_t>(month);
        half.temperature += m.temperature.at(i);
        half.rain += m.rain.at(i);
        half.driest = std::min(half.driest, m.rain.at(i));
        half.wettest = std::max(half.wettest, m.rain.at(i));
    }
    return half;
}

struct Year {
    double mean, coldest, hottest, rain, driest;
    int warmMonths;
    HalfYear summer, winter;
};

Year yearOf(const ClimateMonths &m)
{
    const auto &t = m.temperature;
    const HalfYear a = halfYear(m, southern);
    const HalfYear b = halfYear(m, northern);
    const bool south = a.temperature > b.temperature;
    return {std::accumulate(t.begin(), t.end(), 0.0) / 12.0,
            *std::min_element(t.begin(), t.end()),
            *std::max_element(t.begin(), t.end()),
            std::accumulate(m.rain.begin(), m.rain.end(), 0.0),
            *std::min_element(m.rain.begin(), m.rain.end()),
            static_cast<int>(std::count_if(t.begin(), t.end(), [](double v) { return v >= 10.0; })),
            south ? a : b,
            south ? b : a};
}

double aridThreshold(const Year &y)
{
    const double extra = y.winter.rain >= 0.7 * y.rain ? 0.0 : y.summer.rain >= 0.7 * y.rain ? 28.0 : 14.0;
    return 10.0 * (2.0 * y.mean + extra); // the rule is in cm
}

std::string aridName(const Year &y, double threshold)
{
    return std::string(y.rain < 0.5 * threshold ? "BW" : "BS") + (y.mean >= 18.0 ? "h" : "k");
}

std::string tropicalName(const Year &y)
{
    return y.driest >= 60.0 ? "Af" : y.driest >= 100.0 - y.rain / 25.0 ? "Am" : "Aw";
}

std::string seasonalName(const Year &y)
{
    const bool cold = y.coldest <= 0.0;
    const bool drySummer = y.summer.driest < 40.0 && y.summer.driest < y.winter.wettest / 3.0;
    const bool dryWinter = y.winter.driest < y.summer.wettest / 10.0;
    std::string name = cold ? "D" : "C";
    if (drySummer && (!dryWinter || y.winter.rain >= y.summer.rain))
        name += 's';
    else
        name += dryWinter ? 'w' : 'f';
    if (y.hottest >= 22.0)
        return name + 'a';
    if (y.warmMonths >= 4)
        return name + 'b';
    return name + (cold && y.coldest < -38.0 ? 'd' : 'c');
}

std::string nameOf(const ClimateMonths &months)
{
    const Year y = yearOf(months);
    const double threshold = aridThreshold(y);
    if (y.rain < threshold)
        return aridName(y, threshold);
    if (y.coldest >= 18.0)
        return tropicalName(y);
    if (y.hottest > 10.0)
        return seasonalName(y);
    return y.hottest > 0.0 ? "ET" : "EF";
}

ClimateMonths changed(ClimateMonths months, double kelvin, double share)
{
    for (double &t : months.temperature)
        t += kelvin;
    for (double &p : months.rain)
        p *= 1.0 + share;
    return months;
}

// Tries ever larger changes of one kind; a step is 1/30 of the largest.
void findNeighbor(const ClimateMonths &months, ClimateClass &out)
{
    constexpr int steps = 30;
    for (int i = 1; i <= steps; ++i) {
        for (const double sign : {1.0, -1.0}) {
            const double kelvin = sign * 3.0 * i / steps;
            const double share = sign * 0.3 * i / steps;
            const std::string byRain = nameOf(changed(months, 0.0, share));
            const std::string byHeat = nameOf(changed(months, kelvin, 0.0));
            if (byRain != out.name || byHeat != out.name) {
                const bool rain = byRain != out.name;
                out.runnerUp = rain ? byRain : byHeat;
                out.nearestBy = rain ? "rain" : "temperature";
                out.margin = rain ? share : kelvin;
                return;
            }
        }
    }
}

} // namespace

Result<ClimateClass> climateClass(const ClimateMonths &months)
{
    for (std::size_t i = 0; i < 12; ++i) {
        const double t = months.temperature.at(i);
        const double p = months.rain.at(i);
        if (!(t >= -80.0 && t <= 60.0) || !(p >= 0.0 && p <= 5000.0))
            return Error{Errc::OutOfRange, "no month is like that", "month " + std::to_string(i + 1),
                         "give °C (-80 to 60) and mm of rain (0 to 5,000)"};
    }
    ClimateClass out;
    out.name = nameOf(months);
    const Year year = yearOf(months);
    out.mean = year.mean;
    out.rain = year.rain;
    out.aridBelow = aridThreshold(year);
    findNeighbor(months, out);
    return out;
}

} // namespace snugwalk
