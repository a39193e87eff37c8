// SPDX-License-Identifier: Apache-2.0
// Days of a record as they come in: order, gaps, what was left out; and hours gathered into days.
#pragma once

#include <bitset>

#include "weather/records/read_weather.hpp"

namespace snugwalk {

/// Takes days in order.
class DayGather {
public:
    /// `InvalidInput` for a day that does not come after the one before, `OutOfRange` for one too many.
    [[nodiscard]] Status add(WeatherDay day, const std::string &where);
    void drop(const char *reason, const std::string &where);
    [[nodiscard]] ReadWeather finish() &&;

private:
    ReadWeather m_read;
};

/// One hour; an empty optional was not recorded.
struct HourReading {
    CivilDate date{};
    int minute = 0; ///< of the day
    std::optional<double> temperature, humidity, rain;
    std::optional<double> radiation; ///< mean, as MJ/m² a day
};

/// Takes hours, or shorter steps of one length, in order and makes days of them. A day needs readings in 18
/// of its hours; of humidity, rain and radiation three quarters of its readings.
class HourGather {
public:
    /// `InvalidInput` for an hour that does not come after the one before.
    [[nodiscard]] Status add(const HourReading &hour, const std::string &where);
    [[nodiscard]] Result<ReadWeather> finish() &&;

private:
    [[nodiscard]] Status closeDay();
    DayGather m_days;
    std::optional<HourReading> m_last;
    std::string m_lastWhere;
    std::bitset<24> m_hours;
    int m_warm = 0, m_humid = 0, m_wet = 0, m_bright = 0, m_rained = 0; // readings of each kind
    double m_low = 0, m_high = 0, m_humidity = 0, m_rain = 0, m_radiation = 0;
};

} // namespace snugwalk
