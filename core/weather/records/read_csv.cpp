// SPDX-License-Identifier: Apache-2.0
// Days, hours and months in tables.
#include <algorithm>
#include <array>

#include "base/csv.hpp"
#include "base/text.hpp"
#include "base/units.hpp"
#include "weather/records/day_gather.hpp"
#include "weather/records/measured_column.hpp"
#include "weather/records/read_epw.hpp"
#include "weather/records/read_weather.hpp"

namespace snugwalk {
namespace {

using Header = std::span<const std::string>;

constexpr std::array<std::string_view, 2> dateNames = {"date", "day"};
constexpr std::array<std::string_view, 3> timeNames = {"time", "timestamp", "datetime"};
constexpr long long mostRangeDays = 400'000;
constexpr const char *dayColumns =
    "give a header with date, tmin, tmax, and humidity, rain, radiation where known; hours "
    "have time, temperature instead";

Error absent(Header header, const std::string &name)
{
    return {Errc::InvalidInput, "no column " + name,
            "the header: " + join({header.begin(), header.end()}, ", "), dayColumns};
}

std::string lineOf(const CsvRow &row) { return std::string(row.file) + ", line " + std::to_string(row.line); }

Error badTime(const CsvRow &row, std::size_t column, const char *what, const char *example)
{
    return {Errc::InvalidInput, what, row.where(column), std::string("write it as ") + example};
}

Result<CivilDate> dateIn(const CsvRow &row, std::size_t column)
{
    const std::string_view text = trim(row.cells[column]);
    const auto date = parseDate(text.substr(0, 10));
    if (!date || (text.size() > 10 && text[10] != 'T' && text[10] != ' '))
        return badTime(row, column, "not a date", "2026-11-24");
    return *date;
}

// "2026-11-24T08:10", with seconds and an offset or without; what counts is the time it shows.
Result<HourReading> timeIn(const CsvRow &row, std::size_t column)
{
    const std::string_view text = trim(row.cells[column]);
    const Error fault = badTime(row, column, "not a time", "2026-11-24T08:10");
    const auto date = parseDate(text.substr(0, 10));
    if (!date || text.size() < 16 || (text[10] != 'T' && text[10] != ' ') || text[13] != ':' ||
        text.find_first_not_of("0123456789:.+-Z", 16) != std::string_view::npos)
        return fault;
    const auto hour = parseInteger(text.substr(11, 2));
    const auto minute = parseInteger(text.substr(14, 2));
    if (!hour || !minute || *hour < 0 || *hour > 23 || *minute < 0 || *minute > 59)
        return fault;
    HourReading reading;
    reading.date = *date;
    reading.minute = static_cast<int>(*hour * 60 + *minute);
    return reading;
}

// The columns that may stand in any of the tables, and the cells of a row.
class Columns {
public:
    std::optional<double> low, high, mean, humidity, rain, radiation;

    void find(Header header)
    {
        for (auto &[column, value] : m_columns)
            column.find(header);
    }
    [[nodiscard]] bool has(Measured kind) const
    {
        return m_columns.at(static_cast<std::size_t>(kind)).first.column().has_value();
    }
    Status read(const CsvRow &row)
    {
        for (auto &[column, value] : m_columns) {
            const auto cell = column.read(row);
            if (!cell)
                return cell.error();
            this->*value = *cell;
        }
        if (humidity)
            humidity = std::min(*humidity, 100.0); // a wet sensor
        return done();
    }
    [[nodiscard]] std::vector<std::string> others(Header header, std::size_t when) const
    {
        std::vector<std::string> out;
        for (std::size_t i = 0; i < header.size(); ++i) {
            const bool read =
                i == when || std::any_of(m_columns.begin(), m_columns.end(),
                                         [&](const auto &one) { return one.first.column() == i; });
            if (!read)
                out.push_back(header[i]);
        }
        return out;
    }

private:
    std::array<std::pair<MeasuredColumn, std::optional<double> Columns::*>, 6> m_columns{
        std::pair{MeasuredColumn(Measured::Low), &Columns::low},
        {MeasuredColumn(Measured::High), &Columns::high},
        {MeasuredColumn(Measured::Mean), &Columns::mean},
        {MeasuredColumn(Measured::Humidity), &Columns::humidity},
        {MeasuredColumn(Measured::Rain), &Columns::rain},
        {MeasuredColumn(Measured::Radiation), &Columns::radiation}};
};

// Days or hours, whichever the header tells.
class TableReader {
public:
    Status header(Header header)
    {
        m_columns.find(header);
        const auto time = findPlainColumn(header, timeNames);
        const auto date = findPlainColumn(header, dateNames);
        m_hourly = time.has_value();
        if (!time && !date)
            return absent(header, "date");
        for (const auto &[kind, name] :
             m_hourly ? std::vector{std::pair(Measured::Mean, "temperature")}
                      : std::vector{std::pair(Measured::Low, "tmin"), {Measured::High, "tmax"}}) {
            if (!m_columns.has(kind))
                return absent(header, name);
        }
        m_when = m_hourly ? *time : *date;
        m_others = m_columns.others(header, m_when);
        return done();
    }

    Status row(const CsvRow &row) { return m_hourly ? hour(row) : day(row); }

    Result<ReadWeather> finish() &&
    {
        Result<ReadWeather> read = m_hourly ? std::move(m_hours).finish() : std::move(m_days).finish();
        if (read)
            read->otherColumns = std::move(m_others);
        return read;
    }

private:
    Status day(const CsvRow &row)
    {
        const Result<CivilDate> date = dateIn(row, m_when);
        if (!date)
            return date.error();
        SNUG_TRY(m_columns.read(row));
        if (!m_columns.low || !m_columns.high) {
            m_days.drop("no_temperature", lineOf(row));
            return done();
        }
        WeatherDay day{*date,
                       celsius(*m_columns.low),
                       celsius(*m_columns.high),
                       m_columns.humidity,
                       {},
                       m_columns.radiation,
                       {}};
        if (m_columns.rain)
            day.rain = millimetres(*m_columns.rain);
        return m_days.add(day, lineOf(row));
    }

    Status hour(const CsvRow &row)
    {
        Result<HourReading> hour = timeIn(row, m_when);
        if (!hour)
            return hour.error();
        SNUG_TRY(m_columns.read(row));
        hour->temperature = m_columns.mean;
        hour->humidity = m_columns.humidity;
        hour->rain = m_columns.rain;
        hour->radiation = m_columns.radiation;
        return m_hours.add(*hour, lineOf(row));
    }

    Columns m_columns;
    bool m_hourly = false;
    std::size_t m_when = 0;
    std::vector<std::string> m_others;
    DayGather m_days;
    HourGather m_hours;
};

// Days with or without dates.
class RangeReader {
public:
    Status header(Header header)
    {
        m_columns.find(header);
        m_date = findPlainColumn(header, dateNames);
        for (const auto &[kind, name] : {std::pair(Measured::Low, "tmin"), {Measured::High, "tmax"}}) {
            if (!m_columns.has(kind))
                return absent(header, name);
        }
        return done();
    }

    Status row(const CsvRow &row)
    {
        if (m_date)
            SNUG_TRY(skipTo(row));
        if (static_cast<long long>(days.size()) >= mostRangeDays)
            return tooMany(row);
        SNUG_TRY(m_columns.read(row));
        if (m_columns.low && m_columns.high)
            days.emplace_back(DayRange{celsius(*m_columns.low), celsius(*m_columns.high)});
        else
            days.emplace_back();
        return done();
    }

    std::vector<std::optional<DayRange>> days;

private:
    static Error tooMany(const CsvRow &row)
    {
        return {Errc::OutOfRange, "more than 400,000 days", lineOf(row), "check the date, or split the file"};
    }

    // Days between the last date and this one are days without a reading.
    Status skipTo(const CsvRow &row)
    {
        const Result<CivilDate> date = dateIn(row, *m_date);
        if (!date)
            return date.error();
        if (m_last && *date <= *m_last)
            return Error{Errc::InvalidInput, "this day is not after the one before", lineOf(row),
                         "sort the lines by date and keep one of each"};
        const long long missing = m_last ? daysBetween(*m_last, *date) - 1 : 0;
        if (missing + static_cast<long long>(days.size()) >= mostRangeDays)
            return tooMany(row);
        days.resize(days.size() + static_cast<std::size_t>(missing));
        m_last = *date;
        return done();
    }

    Columns m_columns;
    std::optional<std::size_t> m_date;
    std::optional<CivilDate> m_last;
};

class MonthReader {
public:
    Status header(Header header)
    {
        m_columns.find(header);
        for (const auto &[kind, name] : {std::pair(Measured::Mean, "t"), {Measured::Rain, "p"}}) {
            if (!m_columns.has(kind))
                return Error{Errc::InvalidInput, std::string("no column ") + name,
                             "the header: " + join({header.begin(), header.end()}, ", "),
                             "give a header with t (°C) and p (mm), then twelve lines, January first"};
        }
        return done();
    }

    Status row(const CsvRow &row)
    {
        SNUG_TRY(m_columns.read(row));
        if (count == 12 || !m_columns.mean || !m_columns.rain)
            return Error{Errc::InvalidInput, count == 12 ? "a thirteenth month" : "a month without t or p",
                         lineOf(row), "give twelve complete months, January first"};
        months.temperature.at(count) = *m_columns.mean;
        months.rain.at(count) = *m_columns.rain;
        ++count;
        return done();
    }

    ClimateMonths months;
    std::size_t count = 0;

private:
    Columns m_columns;
};

template <typename Reader>
Status readWith(Reader &reader, std::string_view text, const std::string &file)
{
    const auto header = [&](Header names) -> Status {
        const Status known = reader.header(names);
        if (known)
            return known;
        Error fault = known.error();
        fault.where = file + ", " + fault.where;
        return fault;
    };
    return readCsv(text, file, {header, [&](const CsvRow &row) { return reader.row(row); }});
}

Result<ReadWeather> readTable(std::string_view text, const std::string &file)
{
    TableReader reader;
    SNUG_TRY(readWith(reader, text, file));
    return std::move(reader).finish();
}

} // namespace

Result<ReadWeather> readWeather(std::string_view text, const std::string &file, std::optional<int> year)
{
    Result<ReadWeather> read = isEpw(text) ? readEpw(text, file, year) : readTable(text, file);
    if (read && read->days.empty())
        return Error{Errc::InvalidInput, "no day with a temperature in it", file, dayColumns};
    return read;
}

Result<std::vector<std::optional<DayRange>>> readDayRanges(std::string_view text, const std::string &file)
{
    RangeReader reader;
    SNUG_TRY(readWith(reader, text, file));
    if (reader.days.empty())
        return Error{Errc::InvalidInput, "a header and no day", file, "give a line a day"};
    return std::move(reader.days);
}

Result<ClimateMonths> readClimateMonths(std::string_view text, const std::string &file)
{
    MonthReader reader;
    SNUG_TRY(readWith(reader, text, file));
    if (reader.count != 12)
        return Error{Errc::InvalidInput, std::to_string(reader.count) + " months", file,
                     "give twelve, January first"};
    return reader.months;
}

} // namespace snugwalk
