// SPDX-License-Identifier: Apache-2.0
// The equations of FAO-56 chapter 3, in their order.
#include "weather/laws/radiation.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace snugwalk {
namespace {

constexpr double pi = std::numbers::pi;
constexpr double solarConstant = 0.0820; // MJ m⁻² min⁻¹
constexpr double minutesOfDay = 24.0 * 60.0;
constexpr double rangeFactor = 0.17;
constexpr double lowestMetres = -430.0;
constexpr double highestMetres = 6000.0;

} // namespace

int dayOfYear(CivilDate date)
{
    const CivilDate first{date.year(), std::chrono::January, std::chrono::day{1}};
    return static_cast<int>(daysBetween(first, date)) + 1;
}

Result<SolarDay> solarDay(double latitude, int day)
{
    if (!(latitude >= -90.0 && latitude <= 90.0)) // so that NaN is refused too
        return Error{Errc::OutOfRange, "no such latitude", "latitude", "give -90 to 90 degrees"};
    if (day < 1 || day > 366)
        return Error{Errc::OutOfRange, "no such day of the year", "day", "give 1 to 366"};
    const double phi = latitude * pi / 180.0;
    const double year = 2.0 * pi * day / 365.0;
    const double delta = 0.409 * std::sin(year - 1.39);
    const double sunset = std::acos(std::clamp(-std::tan(phi) * std::tan(delta), -1.0, 1.0));
    SolarDay sun;
    sun.inverseDistance = 1.0 + 0.033 * std::cos(year);
    sun.declination = Angle::fromSi(delta);
    sun.sunset = Angle::fromSi(sunset);
    sun.extraterrestrial = std::max(0.0, minutesOfDay / pi * solarConstant * sun.inverseDistance *
                                             (sunset * std::sin(phi) * std::sin(delta) +
                                              std::cos(phi) * std::cos(delta) * std::sin(sunset)));
    sun.dayLength = 24.0 * sunset / pi;
    return sun;
}

double clearSkyRadiation(const SolarDay &day, Length altitude)
{
    const double z = std::clamp(altitude.si(), lowestMetres, highestMetres);
    return (0.75 + 2e-5 * z) * day.extraterrestrial;
}

Result<double> sunshineRadiation(const SolarDay &day, double brightHours)
{
    if (!(brightHours >= 0.0 && brightHours <= 24.0))
        return Error{Errc::OutOfRange, "no day has that much sunshine", "sunshine", "give 0 to 24 hours"};
    const double share = day.dayLength > 0.0 ? std::min(1.0, brightHours / day.dayLength) : 0.0;
    return (0.25 + 0.50 * share) * day.extraterrestrial;
}

double rangeRadiation(const SolarDay &day, TemperatureDifference range, Length altitude)
{
    return std::min(clearSkyRadiation(day, altitude),
                    rangeFactor * std::sqrt(std::max(0.0, range.si())) * day.extraterrestrial);
}

} // namespace snugwalk
