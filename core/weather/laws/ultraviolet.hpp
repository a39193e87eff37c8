// SPDX-License-Identifier: Apache-2.0
// Ultraviolet light: the index at a moment, its dose over a day, and the ozone that takes it away.
#pragma once

#include <optional>
#include <string_view>

#include "base/quantity.hpp"
#include "base/result.hpp"
#include "weather/laws/radiation.hpp"

namespace snugwalk {

/// Share of the light that clouds let through: `clear` 1, `scattered` 0.89, `broken` 0.73, `overcast` 0.31.
/// Source: public weather-service pages, common practice. Tests: tests/published/weather/tst_ultraviolet.cpp
[[nodiscard]] std::optional<double> cloudShare(std::string_view name);

/// What the light comes through.
struct UvSky {
    double ozone = 300.0; ///< Dobson units; held between 150 and 500
    Length altitude;
    double cloud = 1.0; ///< share let through, see `cloudShare`
};

/// The index of an erythemal irradiance in W/m²: 40 times that, by definition (common practice).
[[nodiscard]] constexpr double indexOfErythemal(double irradiance) { return 40.0 * irradiance; }

/// Shares of an index by which it may be off: under a clear sky, and more by the kilometre of altitude.
inline constexpr double uvDoubt = 0.10;
inline constexpr double uvDoubtPerKm = 0.04;

/// UV index; 0 when the sun is down.
///
/// \param zenithCosine cosine of the sun's angle from the zenith
/// Formula:  12.5 μ^2.42 (Ω/300)^-1.23 · (1 + 0.06 z/km) · cloud
/// Source:   [MADRONICH-2007]; altitude and clouds from public weather-service pages, common practice
/// Accuracy: 6 to 10 % under a clear sky; published altitude figures run from 6 to 12 % a kilometre
/// Limits:   erythemal weighting, not that of any polymer: use ratios of doses
/// Tests:    tests/published/weather/tst_ultraviolet.cpp
[[nodiscard]] double uvIndex(double zenithCosine, const UvSky &sky);

struct UvDay {
    double noonIndex = 0.0;
    double indexHours = 0.0; ///< UV index times hours
    double dose = 0.0;       ///< erythemal, kJ/m²: 3.6/40 of the index hours
};

/// The index over a whole day, by Simpson's rule with 96 intervals from sunrise to sunset.
/// \returns `OutOfRange` as `solarDay`, and for a cloud share outside 0 to 1.
/// Accuracy: 1e-4 of the integral. Tests: tests/published/weather/tst_ultraviolet.cpp
[[nodiscard]] Result<UvDay> uvDay(double latitude, int day, const UvSky &sky);

/// Mean index hours of a day over a year (365 days) under a clear sky at sea level and 300 DU.
[[nodiscard]] double clearYearMeanUv(double latitude);

/// Total ozone in Dobson units by place and day, without the weather of that day.
/// Source:   [VAN-HEUKLON-1979], from memory
/// Accuracy: about 10 %; knows no ozone hole
[[nodiscard]] double ozoneColumn(double latitude, double longitude, int day);

} // namespace snugwalk
