// SPDX-License-Identifier: Apache-2.0
// Checksum first, fields after: nothing is believed of a sentence that was damaged on its way.
#include "trip/nmea_sentence.hpp"

#include <cmath>

#include "base/text.hpp"

namespace snugwalk::nmea {
namespace {

using namespace std::chrono;

constexpr std::size_t maxSentence = 1024;
constexpr double knot = 1852.0 / 3600.0; // exact

bool isDigits(std::string_view text)
{
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

std::optional<int> twoDigits(std::string_view text, std::size_t at)
{
    if (text.size() < at + 2 || !isDigits(text.substr(at, 2)))
        return std::nullopt;
    return (text[at] - '0') * 10 + (text[at + 1] - '0');
}

std::optional<double> nonNegative(std::string_view text)
{
    const auto number = parseDouble(text);
    return number && *number >= 0.0 ? number : std::nullopt;
}

// "hhmmss" or "hhmmss.sss"; a leap second is read as the second before it.
std::optional<milliseconds> readTimeOfDay(std::string_view text)
{
    const auto h = twoDigits(text, 0);
    const auto m = twoDigits(text, 2);
    const auto s = twoDigits(text, 4);
    if (!h || !m || !s || *h > 23 || *m > 59 || *s > 60)
        return std::nullopt;
    auto time = hours(*h) + minutes(*m) + milliseconds(1000 * (*s == 60 ? 59 : *s));
    if (text.size() == 6 || text.substr(6) == ".")
        return time;
    if (text[6] != '.' || !isDigits(text.substr(7)))
        return std::nullopt;
    int scale = 100;
    for (const char c : text.substr(7)) {
        time += milliseconds((c - '0') * scale);
        scale /= 10;
    }
    return time;
}

// "ddmmyy"
std::optional<CivilDate> readDate(std::string_view text)
{
    const auto d = twoDigits(text, 0);
    const auto m = twoDigits(text, 2);
    const auto y = twoDigits(text, 4);
    if (text.size() != 6 || !d || !m || !y)
        return std::nullopt;
    const CivilDate date(year(*y < 80 ? 2000 + *y : 1900 + *y), month(static_cast<unsigned>(*m)),
                         day(static_cast<unsigned>(*d)));
    return date.ok() ? std::optional(date) : std::nullopt;
}

// "4913.2480" with its hemisphere: degrees and minutes run together.
std::optional<double> readAngle(std::string_view text, std::string_view side, char positive, char negative)
{
    const auto number = nonNegative(text);
    if (!number || side.size() != 1 || (side[0] != positive && side[0] != negative))
        return std::nullopt;
    const double wholeDegrees = std::floor(*number / 100.0);
    const double minutesOfArc = *number - wholeDegrees * 100.0;
    if (minutesOfArc >= 60.0)
        return std::nullopt;
    const double degrees = wholeDegrees + minutesOfArc / 60.0;
    return side[0] == negative ? -degrees : degrees;
}

using Fields = std::vector<std::string_view>;

std::optional<GeoPoint> readPosition(const Fields &fields, std::size_t at)
{
    const auto latitude = readAngle(fields[at], fields[at + 1], 'N', 'S');
    const auto longitude = readAngle(fields[at + 2], fields[at + 3], 'E', 'W');
    if (!latitude || !longitude)
        return std::nullopt;
    const GeoPoint point{*latitude, *longitude, std::nullopt, std::nullopt};
    return isValid(point) ? std::optional(point) : std::nullopt;
}

// $--RMC,time,status,lat,N,lon,E,knots,course,date,variation,E[,mode[,nav]]
Outcome readRmc(const Fields &fields)
{
    if (fields.size() < 10)
        return "malformed";
    if (fields[2] != "A" || (fields.size() > 12 && fields[12] == "N"))
        return fields[2] == "A" || fields[2] == "V" ? "no_fix" : "malformed";
    const auto time = readTimeOfDay(fields[1]);
    const auto date = readDate(fields[9]);
    if (!time || !date)
        return fields[1].empty() || fields[9].empty() ? "no_time" : "malformed";
    const auto point = readPosition(fields, 3);
    if (!point)
        return "bad_position";
    Reading reading{*time, date, *point, std::nullopt, std::nullopt};
    if (const auto knots = nonNegative(fields[7]))
        reading.speed = Speed::fromSi(*knots * knot);
    return reading;
}

// $--GGA,time,lat,N,lon,E,quality,satellites,hdop,altitude,M,geoid,M,age,station
Outcome readGga(const Fields &fields)
{
    if (fields.size() < 11 || fields[6].size() > 1 || (!fields[6].empty() && !isDigits(fields[6])))
        return "malformed";
    if (fields[6].empty() || fields[6] == "0")
        return "no_fix";
    const auto time = readTimeOfDay(fields[1]);
    if (!time)
        return fields[1].empty() ? "no_time" : "malformed";
    auto point = readPosition(fields, 2);
    if (!point)
        return "bad_position";
    if (fields[10] == "M")
        point->altitude = parseDouble(fields[9]);
    return Reading{*time, std::nullopt, *point, nonNegative(fields[8]), std::nullopt};
}

bool checksumAgrees(std::string_view body, std::string_view hex)
{
    unsigned sum = 0;
    for (const char c : body)
        sum ^= static_cast<unsigned char>(c);
    return toHex(std::string(1, static_cast<char>(sum))) == lowerAscii(hex);
}

} // namespace

bool isFixSentence(std::string_view fromDollar)
{
    if (fromDollar.size() < 7 || fromDollar[1] == 'P' || fromDollar[6] != ',')
        return false;
    const std::string_view kind = fromDollar.substr(3, 3);
    return kind == "RMC" || kind == "GGA";
}

Outcome readSentence(std::string_view fromDollar)
{
    const std::string_view reach = fromDollar.substr(0, maxSentence + 1);
    const auto end = reach.find_first_of("*\r\n$", 1);
    if (end == std::string_view::npos)
        return reach.size() > maxSentence ? "too_long" : "malformed";
    if (reach[end] != '*' || reach.size() < end + 3)
        return "malformed";
    const std::string_view body = reach.substr(1, end - 1);
    if (!checksumAgrees(body, reach.substr(end + 1, 2)))
        return "bad_checksum";
    const Fields fields = split(body, ',');
    return body.substr(2, 3) == "RMC" ? readRmc(fields) : readGga(fields);
}

} // namespace snugwalk::nmea
