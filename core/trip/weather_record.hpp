// SPDX-License-Identifier: Apache-2.0
// Weather that was measured near the rig, day by day.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/geo.hpp"
#include "base/id.hpp"
#include "base/time.hpp"
#include "base/value.hpp"

namespace snugwalk {

/// An empty optional was not recorded.
struct WeatherDay {
    CivilDate date{};
    Temperature low;
    Temperature high;
    std::optional<double> humidity; ///< percent, mean of the day
    std::optional<Length> rain;
    std::optional<double> radiation; ///< MJ/m² on level ground
    std::optional<Duration> wet;     ///< with humidity above 80 % and no frost
    friend bool operator==(const WeatherDay &, const WeatherDay &) = default;
};

/// Days of one record at most: eleven years.
inline constexpr std::size_t weatherDaysLimit = 4018;

/// Days in order, none twice; days may be missing between them.
struct WeatherRecord {
    Id id;
    Id rig;
    std::string sourceName; ///< the file it was read from, empty when typed in
    GeoPoint place;
    std::vector<WeatherDay> days;
    friend bool operator==(const WeatherRecord &, const WeatherRecord &) = default;
};

/// `days` are rows of the members that `columns` names, in the units that `units` names; null where
/// nothing was recorded. `from` is the first day, by which records sort. As with trips, reading never fails:
/// days that cannot be read, or that do not come after the one before, are left out.
[[nodiscard]] Value toValue(const WeatherRecord &record);
[[nodiscard]] WeatherRecord weatherRecordFromValue(const Value &value);

} // namespace snugwalk
