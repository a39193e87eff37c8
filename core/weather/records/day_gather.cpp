// SPDX-License-Identifier: Apache-2.0
// Order and sums.
#include "weather/records/day_gather.hpp"

#include <algorithm>
#include <utility>

#include "base/units.hpp"
#include "weather/laws/wetness.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t leastHours = 18;

Error outOfOrder(const std::string &what, const std::string &where)
{
    return {Errc::InvalidInput, what, where, "sort the lines by time and keep one of each"};
}

} // namespace

void DayGather::drop(const char *reason, const std::string &where)
{
    const auto known = std::find_if(m_read.drops.begin(), m_read.drops.end(),
                                    [&](const Drop &drop) { return drop.reason == reason; });
    if (known == m_read.drops.end())
        m_read.drops.push_back({reason, 1, where});
    else
        ++known->count;
}

Status DayGather::add(WeatherDay day, const std::string &where)
{
    if (!m_read.days.empty() && day.date <= m_read.days.back().date)
        return outOfOrder(day.date == m_read.days.back().date
                              ? formatDate(day.date) + " stands twice"
                              : formatDate(day.date) + " comes after " + formatDate(m_read.days.back().date),
                          where);
    if (m_read.days.size() == weatherDaysLimit)
        return Error{Errc::OutOfRange, "more than eleven years of days", where, "split the file by years"};
    if (day.low > day.high) {
        std::swap(day.low, day.high);
        drop("swapped", where);
    }
    m_read.days.push_back(day);
    return done();
}

ReadWeather DayGather::finish() &&
{
    for (std::size_t i = 1; i < m_read.days.size(); ++i) {
        const CivilDate expected = addDays(m_read.days[i - 1].date, 1);
        if (m_read.days[i].date != expected)
            m_read.gaps.push_back({expected, addDays(m_read.days[i].date, -1)});
    }
    return std::move(m_read);
}

Status HourGather::closeDay()
{
    if (!m_last)
        return done();
    if (m_hours.count() < leastHours) {
        m_days.drop("short_day", m_lastWhere);
        return done();
    }
    WeatherDay day{m_last->date, celsius(m_low), celsius(m_high), {}, {}, {}, {}};
    const auto enough = [&](int readings) { return 4 * readings >= 3 * m_warm; };
    // hours that nobody read count like the others of the day
    if (enough(m_humid)) {
        day.humidity = m_humidity / m_humid;
        day.wet = Duration::fromSi(3600.0 * 24.0 * m_wet / m_humid);
    }
    if (enough(m_rained))
        day.rain = millimetres(m_rain);
    if (enough(m_bright))
        day.radiation = m_radiation / m_bright;
    return m_days.add(day, m_lastWhere);
}

Status HourGather::add(const HourReading &hour, const std::string &where)
{
    if (m_last && (hour.date < m_last->date || (hour.date == m_last->date && hour.minute <= m_last->minute)))
        return outOfOrder("this time is not after the one before", where);
    if (!m_last || hour.date != m_last->date) {
        SNUG_TRY(closeDay());
        m_hours.reset();
        m_warm = m_humid = m_wet = m_bright = m_rained = 0;
        m_humidity = m_rain = m_radiation = 0.0;
    }
    m_last = hour;
    m_lastWhere = where;
    if (!hour.temperature) {
        m_days.drop("no_temperature", where);
        return done();
    }
    m_low = m_warm == 0 ? *hour.temperature : std::min(m_low, *hour.temperature);
    m_high = m_warm == 0 ? *hour.temperature : std::max(m_high, *hour.temperature);
    m_hours.set(static_cast<std::size_t>(hour.minute / 60));
    ++m_warm;
    if (hour.humidity) {
        ++m_humid;
        m_humidity += *hour.humidity;
        m_wet += isWetHour(celsius(*hour.temperature), *hour.humidity) ? 1 : 0;
    }
    if (hour.rain) {
        ++m_rained;
        m_rain += *hour.rain;
    }
    if (hour.radiation) {
        ++m_bright;
        m_radiation += *hour.radiation;
    }
    return done();
}

Result<ReadWeather> HourGather::finish() &&
{
    SNUG_TRY(closeDay());
    return std::move(m_days).finish();
}

} // namespace snugwalk
