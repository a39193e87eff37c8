// SPDX-License-Identifier: Apache-2.0
// Eight header lines, then an hour a line.
#include "weather/records/read_epw.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "weather/records/day_gather.hpp"

namespace snugwalk {
namespace {

constexpr int headerLines = 8;

// A column of the published list, counted from 1, and the figure that stands for none. A reading at or above
// it is missing too.
struct Column {
    const char *name;
    std::size_t number;
    double missing;
    double low, high;
};
constexpr Column dryBulb{"dry bulb", 7, 99.9, -90, 60};
constexpr Column humidity{"relative humidity", 9, 999, 0, 110};
constexpr Column radiation{"global horizontal radiation", 14, 9999, 0, 1500};
constexpr Column rain{"liquid precipitation depth", 34, 999, 0, 500};
constexpr std::size_t leastCells = 14; // the last columns are often left away

using Cells = std::vector<std::string_view>;

// The names on top may be in another encoding, so the file as a whole is not held to UTF-8; what we quote is.
std::string quoted(std::string_view cell)
{
    const std::string_view start = trim(cell).substr(0, 40);
    return isUtf8(start) ? "\"" + std::string(start) + "\"" : "bytes that are no text";
}

Result<std::optional<double>> reading(const Cells &cells, const Column &column, const std::string &where)
{
    if (column.number > cells.size() || trim(cells[column.number - 1]).empty())
        return std::optional<double>();
    const auto value = parseDouble(trim(cells[column.number - 1]));
    if (!value)
        return Error{Errc::InvalidInput, "not a number: " + quoted(cells[column.number - 1]),
                     where + ", " + column.name, "fetch the file again"};
    if (*value >= column.missing)
        return std::optional<double>();
    if (!(*value >= column.low && *value <= column.high))
        return Error{Errc::OutOfRange, "no weather has that: " + std::string(trim(cells[column.number - 1])),
                     where + ", " + column.name, "the file's unit or column is another; check the line"};
    return std::optional<double>(*value);
}

std::optional<GeoPoint> placeOf(const Cells &location)
{
    if (location.size() < 10)
        return std::nullopt;
    const auto latitude = parseDouble(trim(location[6]));
    const auto longitude = parseDouble(trim(location[7]));
    if (!latitude || !longitude)
        return std::nullopt;
    const GeoPoint place{*latitude, *longitude, parseDouble(trim(location[9])), std::nullopt};
    return isValid(place) ? std::optional(place) : std::nullopt;
}

// Which years the hours are of, and into which they go.
class Years {
public:
    explicit Years(std::optional<int> wanted) : m_wanted(wanted) {}

    Result<int> take(int year, const std::string &where)
    {
        if (m_wanted)
            return *m_wanted;
        if (m_first && *m_first != year)
            return Error{Errc::InvalidInput, "the hours are of different years: a typical year, not a record",
                         where, "say with a year which one it is to stand for, if it is to"};
        m_first = year;
        return year;
    }

private:
    std::optional<int> m_wanted, m_first;
};

Result<HourReading> hourOf(const Cells &cells, Years &years, const std::string &where)
{
    const Error fault{Errc::InvalidInput, "no hour of a year", where, "fetch the file again"};
    const auto year = parseInteger(trim(cells[0]));
    const auto month = parseInteger(trim(cells[1]));
    const auto day = parseInteger(trim(cells[2]));
    const auto hour = parseInteger(trim(cells[3])); // 1 to 24: the hour that ends then
    if (!year || !month || !day || !hour || *year < 1800 || *year > 2200 || *month < 1 || *month > 12 ||
        *day < 1 || *day > 31 || *hour < 1 || *hour > 24)
        return fault;
    const Result<int> into = years.take(static_cast<int>(*year), where);
    if (!into)
        return into.error();
    HourReading out;
    out.date = CivilDate{std::chrono::year{*into}, std::chrono::month{static_cast<unsigned>(*month)},
                         std::chrono::day{static_cast<unsigned>(*day)}};
    if (!out.date.ok())
        return fault;
    out.minute = static_cast<int>(*hour - 1) * 60;
    return out;
}

Status fill(HourReading &hour, const Cells &cells, const std::string &where)
{
    const auto warm = reading(cells, dryBulb, where);
    const auto humid = reading(cells, humidity, where);
    const auto bright = reading(cells, radiation, where);
    const auto wet = reading(cells, rain, where);
    for (const auto *one : {&warm, &humid, &bright, &wet}) {
        if (!*one)
            return one->error();
    }
    hour.temperature = *warm;
    if (*humid && **humid > 0.0)
        hour.humidity = std::min(**humid, 100.0);
    if (*bright)
        hour.radiation = **bright * 0.0864; // Wh/m² in an hour are W/m²
    hour.rain = *wet;
    return done();
}

} // namespace

bool isEpw(std::string_view text) { return text.starts_with("LOCATION,"); }

Result<ReadWeather> readEpw(std::string_view text, const std::string &file, std::optional<int> year)
{
    if (year && (*year < 1800 || *year > 2200))
        return Error{Errc::OutOfRange, "no such year", "year", "give 1800 to 2200"};
    HourGather gather;
    Years years(year);
    std::optional<GeoPoint> place;
    for (long long line = 1; !text.empty(); ++line) {
        const auto end = text.find('\n');
        const Cells cells = split(trim(text.substr(0, end)), ',');
        text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
        const std::string where = file + ", line " + std::to_string(line);
        if (line == 1)
            place = placeOf(cells);
        if (line <= headerLines || (cells.size() == 1 && cells[0].empty()))
            continue;
        if (cells.size() < leastCells)
            return Error{Errc::InvalidInput, std::to_string(cells.size()) + " cells where an hour has 35",
                         where, "fetch the file again"};
        Result<HourReading> hour = hourOf(cells, years, where);
        if (!hour)
            return hour.error();
        SNUG_TRY(fill(*hour, cells, where));
        SNUG_TRY(gather.add(*hour, where));
    }
    Result<ReadWeather> read = std::move(gather).finish();
    if (read)
        read->place = place;
    return read;
}

} // namespace snugwalk
