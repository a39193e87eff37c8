// SPDX-License-Identifier: Apache-2.0
// Whatever the readers of weather let through is weather: in order, in bounds, storable; all else is refused
// with a place and a remedy.
#include "fuzz.hpp"
#include "weather/records/read_weather.hpp"

using namespace snugwalk;

namespace {

bool between(double v, double low, double high) { return v >= low && v <= high; } // NaN is not

void checkDays(const ReadWeather &read)
{
    SNUG_ASSERT(!read.days.empty() && read.days.size() <= weatherDaysLimit);
    SNUG_ASSERT(!read.place || isValid(*read.place));
    for (std::size_t i = 0; i < read.days.size(); ++i) {
        const WeatherDay &day = read.days[i];
        SNUG_ASSERT(i == 0 || read.days[i - 1].date < day.date);
        SNUG_ASSERT(day.date.ok() && day.low <= day.high);
        SNUG_ASSERT(between(day.low.si(), 183.0, 334.0) && between(day.high.si(), 183.0, 334.0));
        SNUG_ASSERT(!day.humidity || between(*day.humidity, 0.0, 100.0));
        SNUG_ASSERT(!day.rain || between(day.rain->si(), 0.0, 24.0 * 60.0 * 5.0));
        SNUG_ASSERT(!day.radiation || between(*day.radiation, 0.0, 130.0));
        SNUG_ASSERT(!day.wet || between(day.wet->si(), 0.0, 86400.0));
    }
    for (const WeatherGap &gap : read.gaps)
        SNUG_ASSERT(gap.from <= gap.to);
    WeatherRecord record;
    record.days = read.days;
    SNUG_ASSERT(weatherRecordFromValue(decodeCbor(encodeCbor(toValue(record))).value()) == record);
}

void checkError(const Error &error) { SNUG_ASSERT(!error.what.empty() && !error.act.empty()); }

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view text = asText(data, size);
    for (const auto year : {std::optional<int>(), std::optional(2026)}) {
        const auto read = readWeather(text, "f", year);
        read ? checkDays(*read) : checkError(read.error());
    }
    const auto ranges = readDayRanges(text, "f");
    if (ranges)
        SNUG_ASSERT(freezeThaw(*ranges)->cycles <= static_cast<int>(ranges->size()));
    else
        checkError(ranges.error());
    const auto months = readClimateMonths(text, "f");
    if (months)
        SNUG_ASSERT(!climateClass(*months)->name.empty());
    else
        checkError(months.error());
    return 0;
}
