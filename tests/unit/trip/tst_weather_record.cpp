// SPDX-License-Identifier: Apache-2.0
// Weather records survive the way into a value tree, its bytes, and back.
#include <limits>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "trip/weather_record.hpp"

using namespace snugwalk;

namespace {

CivilDate day(unsigned d) { return parseDate("2026-01-0" + std::to_string(d)).value(); }

WeatherRecord full()
{
    WeatherRecord record;
    record.rig.bytes[15] = 10;
    record.sourceName = "station.csv";
    record.place = {-43.5, 172.6, 12.5, metres(4.0)};
    record.days = {
        {day(1), celsius(-3.3), celsius(4.7), 81.5, millimetres(2.3), 3.1, Duration::fromSi(30600)},
        {day(2), celsius(0.1), celsius(0.1), {}, {}, {}, {}},
        {day(5), celsius(1.0), celsius(2.0), {}, Length(), 0.0, Duration()}};
    return record;
}

} // namespace

TEST_CASE("a record with everything and one with nothing come back equal")
{
    for (const WeatherRecord &record : {full(), WeatherRecord{}}) {
        CHECK(weatherRecordFromValue(toValue(record)) == record);
        const auto stored = decodeCbor(encodeCbor(toValue(record)));
        REQUIRE(stored);
        CHECK(weatherRecordFromValue(*stored) == record);
    }
}

TEST_CASE("rows say what their members are, and records sort by their first day")
{
    const Value value = toValue(full());
    CHECK(value["from"] == Value("2026-01-01T00:00:00+00:00"));
    CHECK(value["columns"].list().size() == 7);
    CHECK(value["units"].list().size() == 7);
    CHECK(value["days"].list()[0].list()[0] == Value("2026-01-01"));
    CHECK(value["days"].list()[1].list()[3].isNull());
}

TEST_CASE("days that cannot be read or come too late are left out, never more than the limit")
{
    Value value = toValue(full());
    Value::List rows = value["days"].list();
    rows.emplace_back(Value::List{"2026-01-03", 270.0, 280.0, {}, {}, {}, {}}); // before the one before
    rows.emplace_back(Value::List{"2026-01-07", "warm", 280.0, {}, {}, {}, {}});
    rows.emplace_back(Value::List{"soon", 270.0, 280.0, {}, {}, {}, {}});
    rows.emplace_back(Value::List{"2026-01-08", 270.0});
    rows.emplace_back(
        Value::List{"2026-01-09", 270.0, std::numeric_limits<double>::infinity(), {}, {}, {}, {}});
    rows.emplace_back(7);
    value.member("days") = rows;
    CHECK(weatherRecordFromValue(value).days == full().days);
    CHECK(weatherRecordFromValue("text") == WeatherRecord{});
    WeatherRecord longOne;
    CivilDate date = day(1);
    for (std::size_t i = 0; i < weatherDaysLimit + 9; ++i, date = addDays(date, 1))
        longOne.days.push_back({date, celsius(1), celsius(2), {}, {}, {}, {}});
    CHECK(weatherRecordFromValue(toValue(longOne)).days.size() == weatherDaysLimit);
}
