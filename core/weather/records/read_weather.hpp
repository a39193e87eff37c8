// SPDX-License-Identifier: Apache-2.0
// Weather records as files hold them: days, hours, and hours of a simulation's weather file (EPW).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "trip/trip.hpp"
#include "trip/weather_record.hpp"
#include "weather/laws/climate_class.hpp"
#include "weather/laws/freeze_thaw.hpp"

namespace snugwalk {

/// Days between two days of a record that it says nothing of.
struct WeatherGap {
    CivilDate from{};
    CivilDate to{};
    friend bool operator==(const WeatherGap &, const WeatherGap &) = default;
};

struct ReadWeather {
    std::vector<WeatherDay> days;
    std::vector<WeatherGap> gaps;
    /// What was left out or changed: `no_temperature` (an empty cell), `short_day` (under 18 hours),
    /// `swapped` (low above high: taken the other way round).
    std::vector<Drop> drops;
    std::vector<std::string> otherColumns; ///< not read
    std::optional<GeoPoint> place;         ///< where the file says so
};

/// Reads whichever of the three it is.
///
/// Days:  a header with `date`, `tmin`, `tmax` and if known `humidity`, `rain`, `radiation`.
/// Hours: `time`, `temperature` and the same; a time is the local one that it shows, with or without its
///        offset; a day with readings in under 18 of its hours is left out.
/// EPW:   comma-separated hours under eight header lines; counted from 1, dry bulb is column 7, humidity 9,
///        global radiation 14, rain 34; missing is 99.9, 999, 9999, 999.
/// Units go by the column's name, see `MeasuredColumn`.
///
/// \param file the name that errors tell
/// \param year the year to write the days of an EPW file into. Its months often come from different years;
///             without `year` such a file is refused, for it is a typical year and no record.
/// \returns `InvalidInput` with line and reason for what is no number, days out of order or given twice;
///          `OutOfRange` for what no weather has and for more days than `weatherDaysLimit`.
/// Source:  [EPW], column list from memory
/// Tests:   tests/unit/weather/tst_read_weather.cpp, tst_read_epw.cpp, tests/fuzz/fuzz_weather.cpp
[[nodiscard]] Result<ReadWeather> readWeather(std::string_view text, const std::string &file,
                                              std::optional<int> year = std::nullopt);

/// Columns `tmin`, `tmax` in the order of days, with or without `date`; empty cells and days that are missing
/// between two dates are days without a reading. `OutOfRange` for more than 400,000 days.
[[nodiscard]] Result<std::vector<std::optional<DayRange>>> readDayRanges(std::string_view text,
                                                                         const std::string &file);

/// Columns `t` (°C) and `p` (mm): twelve rows, January first.
[[nodiscard]] Result<ClimateMonths> readClimateMonths(std::string_view text, const std::string &file);

} // namespace snugwalk
