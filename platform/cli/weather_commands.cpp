// SPDX-License-Identifier: Apache-2.0
// weather add, note, list: weather that was measured near the rig.
#include <filesystem>

#include "base/text.hpp"
#include "base/units.hpp"
#include "cli/weather_options.hpp"
#include "logbook/files.hpp"
#include "logbook/query.hpp"
#include "weather/records/read_weather.hpp"

namespace snugwalk::cli {
namespace {

constexpr std::size_t mostBytes = std::size_t{64} << 20;

struct AddOptions {
    std::string file, year;
};

struct NoteOptions {
    std::string date, low, high, humidity, rain;
};

Value recordValue(const WeatherRecord &record, bool days)
{
    Value json = toValue(record);
    json.member("id") = record.id.text();
    json.member("day_count") = record.days.size();
    json.member("until") = formatDate(record.days.back().date);
    if (!days)
        json.member("days") = Value();
    return json;
}

std::string recordLine(const WeatherRecord &record)
{
    return record.id.shortText() + "  " + formatDate(record.days.front().date) + " to " +
           formatDate(record.days.back().date) + "  " + std::to_string(record.days.size()) + " days  " +
           fixed(record.place.latitude, 2) + ", " + fixed(record.place.longitude, 2) +
           (record.sourceName.empty() ? "" : "  " + record.sourceName) + "\n";
}

std::string whatWasLeftOut(const ReadWeather &read)
{
    std::string out;
    for (const Drop &drop : read.drops)
        out += "  " + replaceAll(drop.reason, "_", " ") + ": " + std::to_string(drop.count) + ", first at " +
               drop.firstWhere + "\n";
    for (const WeatherGap &gap : read.gaps)
        out += "  nothing from " + formatDate(gap.from) + " to " + formatDate(gap.to) +
               ": normals count there\n";
    if (!read.otherColumns.empty())
        out += "  columns not read: " + join(read.otherColumns, ", ") + "\n";
    return out;
}

Value readValue(const ReadWeather &read)
{
    Value::List drops, gaps;
    for (const Drop &drop : read.drops)
        drops.push_back(
            Value::Map{{"reason", drop.reason}, {"count", drop.count}, {"first_where", drop.firstWhere}});
    for (const WeatherGap &gap : read.gaps)
        gaps.push_back(Value::Map{{"from", formatDate(gap.from)}, {"to", formatDate(gap.to)}});
    return Value::Map{{"drops", drops}, {"gaps", gaps}, {"other_columns", textList(read.otherColumns)}};
}

Result<GeoPoint> placeOfRecord(const Doer &doer, const std::optional<GeoPoint> &told)
{
    if (doer.where)
        return *doer.where;
    if (told)
        return *told;
    return Error{Errc::Usage, "weather without its place", "--where", "give --where \"latitude, longitude\""};
}

Result<Answer> keep(Session &session, WeatherRecord record, const Doer &doer, const ReadWeather &read)
{
    const Result<Id> id = addWeather(**session.book(), record, doer);
    if (!id)
        return id.error();
    record.id = *id;
    Value json = recordValue(record, false);
    const Value told = readValue(read); // named: a loop over a part of a temporary reads what is gone
    for (const auto &[key, value] : told.map())
        json.member(key) = value;
    return Answer{json, recordLine(record) + whatWasLeftOut(read)};
}

Result<Answer> add(Session &session, const AddOptions &o)
{
    const Result<Rig> rig = session.rig();
    const Result<Doer> doer = session.doer();
    if (!rig || !doer)
        return rig ? doer.error() : rig.error();
    std::optional<int> year;
    if (!o.year.empty()) {
        const auto number = parseInteger(o.year);
        if (!number || *number < 1800 || *number > 2200)
            return Error{Errc::InvalidInput, "not a year: \"" + o.year + "\"", "--year", "write it as 2026"};
        year = static_cast<int>(*number);
    }
    const auto bytes = readFile(o.file, mostBytes);
    if (!bytes)
        return bytes.error();
    const auto read = readWeather(*bytes, o.file, year);
    if (!read)
        return read.error();
    const auto place = placeOfRecord(*doer, read->place);
    if (!place)
        return place.error();
    return keep(session,
                {Id{}, rig->id, std::filesystem::path(o.file).filename().string(), *place, read->days}, *doer,
                *read);
}

Result<WeatherDay> dayOf(const NoteOptions &o)
{
    const auto date = dateOf(o.date, "DATE");
    const auto low = temperatureOf(o.low, "--low");
    const auto high = temperatureOf(o.high, "--high");
    if (!date || !low || !high)
        return !date ? date.error() : !low ? low.error() : high.error();
    if (!(*low >= celsius(-90) && *low <= *high && *high <= celsius(60)))
        return Error{Errc::OutOfRange, "no day is like that", "--low, --high",
                     "give -90 to 60 °C, the lower one as --low"};
    WeatherDay day{*date, *low, *high, {}, {}, {}, {}};
    if (!o.humidity.empty()) {
        const auto humidity = numberOf(o.humidity, "--humidity", "60, percent");
        if (!humidity)
            return humidity.error();
        if (!(*humidity > 0.0 && *humidity <= 100.0))
            return Error{Errc::OutOfRange, "no air is that damp or dry", "--humidity",
                         "give percent, above 0, at most 100"};
        day.humidity = *humidity;
    }
    if (!o.rain.empty()) {
        const Result<double> rain = parseSi(Dimension::Length, o.rain, findUnit(Dimension::Length, "mm"));
        if (!rain)
            return Error{rain.error().code, rain.error().what, "--rain", rain.error().act};
        if (!(*rain >= 0.0 && *rain <= 5.0))
            return Error{Errc::OutOfRange, "no day has that much rain", "--rain", "give 0 to 5,000 mm"};
        day.rain = Length::fromSi(*rain);
    }
    return day;
}

Result<Answer> note(Session &session, const NoteOptions &o)
{
    const Result<Rig> rig = session.rig();
    const Result<Doer> doer = session.doer();
    if (!rig || !doer)
        return rig ? doer.error() : rig.error();
    const auto day = dayOf(o);
    const auto place = placeOfRecord(*doer, std::nullopt);
    if (!day || !place)
        return day ? place.error() : day.error();
    return keep(session, {Id{}, rig->id, "", *place, {*day}}, *doer, {});
}

Result<Answer> list(Session &session)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const auto records = weatherOf(**session.book(), rig->id);
    if (!records)
        return records.error();
    Value::List json;
    std::string text;
    for (const WeatherRecord &record : *records) {
        if (record.days.empty()) // of a newer version
            continue;
        json.push_back(recordValue(record, true));
        text += recordLine(record);
    }
    return Answer{Value::Map{{"weather", json}}, text.empty() ? "no weather record yet\n" : text};
}

} // namespace

void addWeatherCommands(CLI::App &app, Registry &registry)
{
    CLI::App *weather =
        app.add_subcommand("weather", "sun, heat, frost, salt and wet: by place, by day, by formula");
    weather->require_subcommand(1);
    addWeatherPlaceCommands(*weather, registry);
    addWeatherSunCommands(*weather, registry);
    addWeatherMetalCommands(*weather, registry);

    auto a = std::make_shared<AddOptions>();
    CLI::App *adding = weather->add_subcommand(
        "add", "put measured weather into the logbook; the place is --where, or the file's");
    adding
        ->add_option(
            "file", a->file,
            "CSV of days (date, tmin, tmax °C; humidity %, rain mm, radiation MJ/m² a day), CSV of hours "
            "(time, temperature; radiation_w W/m²), or EPW; tmin_f is °F, rain_in inches")
        ->required();
    adding->add_option("--year", a->year, "the year that a typical year (EPW) is to stand for");
    registry.add(*adding, "  snugwalk --where \"-44.27, 170.10\" weather add winter.csv",
                 [a](Session &s) { return add(s, *a); });

    auto n = std::make_shared<NoteOptions>();
    CLI::App *noting = weather->add_subcommand("note", "write down one day's readings; the place is --where");
    noting->add_option("date", n->date, "the day, such as 2026-07-15")->required();
    noting->add_option("--low", n->low, "°C unless a unit is written")->required();
    noting->add_option("--high", n->high, "°C unless a unit is written")->required();
    noting->add_option("--humidity", n->humidity, "mean of the day, percent");
    noting->add_option("--rain", n->rain, "mm unless a unit is written");
    registry.add(*noting, "  snugwalk --where \"-44.27, 170.10\" weather note 2026-07-15 --low -6 --high 3",
                 [n](Session &s) { return note(s, *n); });

    registry.add(*weather->add_subcommand("list", "all weather records of the rig"),
                 "  snugwalk weather list", [](Session &s) { return list(s); });
}

} // namespace snugwalk::cli
