// SPDX-License-Identifier: Apache-2.0
// The sun's path and its energy on level ground, day by day.
#pragma once

#include "base/quantity.hpp"
#include "base/result.hpp"
#include "base/time.hpp"

namespace snugwalk {

/// 1 to 366.
[[nodiscard]] int dayOfYear(CivilDate date);

/// The sun over one day at one latitude, above the air.
struct SolarDay {
    double inverseDistance = 1.0;  ///< (mean distance / distance)², relative
    Angle declination;             ///< north positive
    Angle sunset;                  ///< hour angle at sunset: 0 in polar night, pi in polar day
    double extraterrestrial = 0.0; ///< MJ m⁻² d⁻¹ on level ground
    double dayLength = 0.0;        ///< hours
};

/// \param latitude degrees, -90 to 90; \param day of the year, 1 to 366
/// \returns `OutOfRange` naming the one that is not.
///
/// Formula:  dr = 1 + 0.033 cos(2πJ/365); δ = 0.409 sin(2πJ/365 - 1.39); ωs = arccos(-tan φ tan δ), clamped;
///           Ra = (24·60/π)·0.0820·dr (ωs sin φ sin δ + cos φ cos δ sin ωs); N = 24 ωs/π
/// Source:   [FAO-56] equations 21 to 25, 34
/// Accuracy: δ is 1.04 degrees off in October, less else, which up to 60 degrees is 10 % of Ra and 19 minutes
/// of day
///           at most; the day ends with the sun's centre on a flat horizon, 7 to 23 minutes less than the
///           almanac's
/// Tests:    tests/published/weather/tst_radiation.cpp, tests/real/sun_libraries.py
[[nodiscard]] Result<SolarDay> solarDay(double latitude, int day);

/// Rso = (0.75 + 2e-5 z) Ra, MJ m⁻² d⁻¹; z is held between -430 m and 6,000 m.
/// Source: [FAO-56] equation 37. Accuracy: about 5 % under a clean sky (common practice).
[[nodiscard]] double clearSkyRadiation(const SolarDay &day, Length altitude);

/// Rs = (0.25 + 0.50 n/N) Ra from hours of bright sunshine; more than the day holds counts as all of it.
/// Source: [FAO-56] equation 35. \returns `OutOfRange` for hours outside 0 to 24.
[[nodiscard]] Result<double> sunshineRadiation(const SolarDay &day, double brightHours);

/// Rs = 0.17 √(Tmax - Tmin) Ra, at most Rso: what a cloudy or clear sky let through, told by the day's
/// range. 0.17 lies between the 0.16 of inland places and the 0.19 of coasts.
/// Source: [FAO-56] equation 50, from memory. Accuracy: about 15 % for a month, 30 % for a day (common
/// practice).
[[nodiscard]] double rangeRadiation(const SolarDay &day, TemperatureDifference range, Length altitude);

} // namespace snugwalk
