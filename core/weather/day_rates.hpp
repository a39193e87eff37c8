// SPDX-License-Identifier: Apache-2.0
// Doses of weather over doses of a reference day.
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace snugwalk {

enum class WeatherDriver { Sun, Heat, Wetness, Frost, Salt };
inline constexpr std::array weatherDrivers = {WeatherDriver::Sun, WeatherDriver::Heat, WeatherDriver::Wetness,
                                              WeatherDriver::Frost, WeatherDriver::Salt};
/// As in the catalogue: `sun`, `heat`, `wetness`, `frost`, `salt`.
[[nodiscard]] std::string_view slug(WeatherDriver driver);
[[nodiscard]] std::optional<WeatherDriver> findWeatherDriver(std::string_view slug);

/// Dose over reference dose, not clamped; the reference is 1.
struct RateRange {
    double value = 1.0, low = 1.0, high = 1.0;
    friend bool operator==(const RateRange &, const RateRange &) = default;
};

struct DayRates {
    std::array<RateRange, weatherDrivers.size()> rate{};
    bool recorded = false; ///< by a record of that day
    bool known = true;     ///< false: no place or no normals, so that all rates are 1
    [[nodiscard]] RateRange &operator[](WeatherDriver d) { return rate[static_cast<std::size_t>(d)]; }
    [[nodiscard]] const RateRange &operator[](WeatherDriver d) const
    {
        return rate[static_cast<std::size_t>(d)];
    }
    friend bool operator==(const DayRates &, const DayRates &) = default;
};

// The reference year: the light of a clear one at 35 degrees and sea level, 20 °C, the middle of C3, 20
// freeze-thaw cycles, 2,500 wet hours. Common practice, declared.
inline constexpr double referenceLatitude = 35.0;
inline constexpr double daysOfYear = 365.25;
inline constexpr double referenceWetHours = 2500.0 / daysOfYear; ///< a day
inline constexpr double referenceCycles = 20.0 / daysOfYear;     ///< a day
/// Steel, µm/a: the geometric middle of C3's 25 and 50.
inline constexpr double referenceSteel = 35.35533905932738;

} // namespace snugwalk
