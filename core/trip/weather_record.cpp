// SPDX-License-Identifier: Apache-2.0
// Records of weather as rows.
#include "trip/weather_record.hpp"

#include "trip/value_parts.hpp"

namespace snugwalk {
namespace {

using namespace trip_parts;

template <typename Q>
Value siOf(const std::optional<Q> &amount)
{
    return amount ? Value(amount->si()) : Value();
}

Value rowOf(const WeatherDay &day)
{
    return Value::List{formatDate(day.date), day.low.si(),  day.high.si(), day.humidity,
                       siOf(day.rain),       day.radiation, siOf(day.wet)};
}

std::optional<double> finite(const Value &value)
{
    const auto number = value.asDouble();
    return number && std::isfinite(*number) ? number : std::nullopt;
}

std::optional<WeatherDay> readRow(const Value &value)
{
    const auto &cells = value.list();
    if (cells.size() < 7)
        return std::nullopt;
    const auto date = parseDate(cells[0].asString().value_or(""));
    const auto low = finite(cells[1]);
    const auto high = finite(cells[2]);
    if (!date || !low || !high)
        return std::nullopt;
    WeatherDay day{
        *date, Temperature::fromSi(*low), Temperature::fromSi(*high), finite(cells[3]), {}, finite(cells[5]),
        {}};
    if (const auto rain = finite(cells[4]))
        day.rain = Length::fromSi(*rain);
    if (const auto wet = finite(cells[6]))
        day.wet = Duration::fromSi(*wet);
    return day;
}

} // namespace

Value toValue(const WeatherRecord &record)
{
    Value::List rows;
    rows.reserve(record.days.size());
    for (const WeatherDay &day : record.days)
        rows.push_back(rowOf(day));
    const CivilDate first = record.days.empty() ? CivilDate{} : record.days.front().date;
    return Value::Map{{"rig", record.rig.text()},
                      {"source_name", record.sourceName},
                      {"place", place(record.place)},
                      {"from", formatLocal({startOfDay(first), {}})},
                      {"columns", Value::List{"date", "low", "high", "humidity", "rain", "radiation", "wet"}},
                      {"units", Value::List{"", "K", "K", "%", "m", "MJ/m²", "s"}},
                      {"days", std::move(rows)}};
}

WeatherRecord weatherRecordFromValue(const Value &value)
{
    WeatherRecord record;
    record.rig = Id::parse(value["rig"].asString().value_or("")).value_or(Id{});
    record.sourceName = value["source_name"].asString().value_or("");
    record.place = readPlace(value["place"]).value_or(GeoPoint{});
    for (const Value &row : value["days"].list()) {
        const auto day = readRow(row);
        if (record.days.size() == weatherDaysLimit)
            break;
        if (day && (record.days.empty() || record.days.back().date < day->date))
            record.days.push_back(*day);
    }
    return record;
}

} // namespace snugwalk
