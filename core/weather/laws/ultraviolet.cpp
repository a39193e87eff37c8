// SPDX-License-Identifier: Apache-2.0
// One power law, integrated over the sun's path.
#include "weather/laws/ultraviolet.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace snugwalk {
namespace {

constexpr double pi = std::numbers::pi;
constexpr int halfIntervals = 48; // the path is symmetric about noon: 96 over the day
constexpr double leastOzone = 150.0;
constexpr double mostOzone = 500.0;

double skyFactor(const UvSky &sky)
{
    const double ozone = std::clamp(sky.ozone, leastOzone, mostOzone);
    return 12.5 * std::pow(ozone / 300.0, -1.23) * (1.0 + 0.06 * sky.altitude.si() / 1000.0) * sky.cloud;
}

double sunPower(double zenithCosine) { return zenithCosine > 0.0 ? std::pow(zenithCosine, 2.42) : 0.0; }

// ∫ μ^2.42 dt over the day, in hours.
double pathIntegral(double latitude, const SolarDay &sun)
{
    const double phi = latitude * pi / 180.0;
    const double high = std::sin(phi) * std::sin(sun.declination.si());
    const double across = std::cos(phi) * std::cos(sun.declination.si());
    const double step = sun.sunset.si() / halfIntervals;
    double sum = 0.0;
    for (int i = 0; i <= halfIntervals; ++i) {
        const double weight = i == 0 || i == halfIntervals ? 1.0 : i % 2 == 1 ? 4.0 : 2.0;
        sum += weight * sunPower(high + across * std::cos(i * step));
    }
    return 2.0 * sum * step / 3.0 * 12.0 / pi;
}

double radians(double degrees) { return degrees * pi / 180.0; }

} // namespace

std::optional<double> cloudShare(std::string_view name)
{
    for (const auto &[sky, share] : {std::pair(std::string_view("clear"), 1.0),
                                     {"scattered", 0.89},
                                     {"broken", 0.73},
                                     {"overcast", 0.31}}) {
        if (name == sky)
            return share;
    }
    return std::nullopt;
}

double uvIndex(double zenithCosine, const UvSky &sky) { return skyFactor(sky) * sunPower(zenithCosine); }

Result<UvDay> uvDay(double latitude, int day, const UvSky &sky)
{
    if (!(sky.cloud >= 0.0 && sky.cloud <= 1.0))
        return Error{Errc::OutOfRange, "no such share of light", "cloud",
                     "give 1 for a clear sky, down to 0.31 for an overcast one"};
    const Result<SolarDay> sun = solarDay(latitude, day);
    if (!sun)
        return sun.error();
    UvDay out;
    out.noonIndex = uvIndex(std::cos(radians(latitude) - sun->declination.si()), sky);
    out.indexHours = skyFactor(sky) * pathIntegral(latitude, *sun);
    out.dose = out.indexHours * 3.6 / indexOfErythemal(1.0); // kJ are 3.6 times W h / 1000
    return out;
}

double clearYearMeanUv(double latitude)
{
    double sum = 0.0;
    for (int day = 1; day <= 365; ++day)
        sum += uvDay(latitude, day, UvSky{}).value().indexHours;
    return sum / 365.0;
}

double ozoneColumn(double latitude, double longitude, int day)
{
    const bool north = latitude >= 0.0;
    const double a = north ? 150.0 : 100.0;
    const double b = north ? 40.0 : 30.0;
    const double c = north ? 20.0 : 30.0;
    const double f = north ? -30.0 : 152.625;
    const double g = north ? 3.0 : 2.0;
    const double h = north ? 1.28 : 1.5;
    const double shift = !north ? -75.0 : longitude > 0.0 ? 20.0 : 0.0;
    const double belt = std::sin(radians(h * latitude));
    return 235.0 +
           (a + b * std::sin(radians(0.9865 * (day + f))) + c * std::sin(radians(g * (longitude + shift)))) *
               belt * belt;
}

} // namespace snugwalk
