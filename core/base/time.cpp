// SPDX-License-Identifier: Apache-2.0
// Reading and writing times as RFC 3339 has them; calendar arithmetic by the standard library.
#include "base/time.hpp"

#include <array>
#include <cstdio>
#include <ctime>

#include "base/text.hpp"

namespace snugwalk {
namespace {

using namespace std::chrono;

std::string clockText(Instant local, bool withSeconds)
{
    const auto day = floor<days>(local);
    const hh_mm_ss time(local - day);
    std::array<char, 40> out{};
    std::snprintf(out.data(), out.size(), withSeconds ? "%02d:%02d:%02d" : "%02d:%02d",
                  static_cast<int>(time.hours().count()), static_cast<int>(time.minutes().count()),
                  static_cast<int>(time.seconds().count()));
    std::string text = out.data();
    if (withSeconds && time.subseconds().count() != 0) {
        std::snprintf(out.data(), out.size(), ".%03d", static_cast<int>(time.subseconds().count()));
        text += out.data();
    }
    return text;
}

Instant localInstant(const LocalTime &time) { return time.instant + minutes(time.offset.minutes); }

// A number of exactly `digits` digits at `at`.
std::optional<int> digitsAt(std::string_view text, std::size_t at, std::size_t digits)
{
    if (text.size() < at + digits)
        return std::nullopt;
    int value = 0;
    for (const char c : text.substr(at, digits)) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

struct Offset {
    int minutes;
    std::size_t length;
};

std::optional<Offset> offsetAt(std::string_view text)
{
    if (text == "Z" || text == "z")
        return Offset{0, 1};
    if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':')
        return std::nullopt;
    const auto h = digitsAt(text, 1, 2);
    const auto m = digitsAt(text, 4, 2);
    if (!h || !m || *h > 14 || *m > 59)
        return std::nullopt;
    const int total = *h * 60 + *m;
    return Offset{text[0] == '-' ? -total : total, 6};
}

} // namespace

std::string formatDate(CivilDate date)
{
    std::array<char, 40> out{};
    std::snprintf(out.data(), out.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return out.data();
}

std::string formatInstant(Instant instant)
{
    return formatDate(CivilDate(floor<days>(instant))) + "T" + clockText(instant, true) + "Z";
}

std::string formatLocal(const LocalTime &time)
{
    const Instant local = localInstant(time);
    const int total = time.offset.minutes < 0 ? -time.offset.minutes : time.offset.minutes;
    const CivilDate date(floor<days>(local));
    if (const int y = static_cast<int>(date.year()); y < 0 || y > 9999 || total >= 6000) {
        std::array<char, 40> zone{};
        std::snprintf(zone.data(), zone.size(), "%c%02d:%02d", time.offset.minutes < 0 ? '-' : '+',
                      total / 60, total % 60);
        return formatDate(date) + "T" + clockText(local, true) + zone.data();
    }
    // digit by digit: every entry that comes from another device is written so once
    const hh_mm_ss<milliseconds> clock(local - floor<days>(local));
    std::string text;
    text.reserve(29);
    const auto put = [&text](long long number, int digits, char after) {
        std::array<char, 4> reversed{};
        for (int i = 0; i < digits; ++i, number /= 10)
            reversed.at(static_cast<std::size_t>(i)) = static_cast<char>('0' + number % 10);
        for (int i = digits; i-- > 0;)
            text += reversed.at(static_cast<std::size_t>(i));
        if (after != 0)
            text += after;
    };
    put(static_cast<int>(date.year()), 4, '-');
    put(static_cast<unsigned>(date.month()), 2, '-');
    put(static_cast<unsigned>(date.day()), 2, 'T');
    put(clock.hours().count(), 2, ':');
    put(clock.minutes().count(), 2, ':');
    const long long millis = clock.subseconds().count();
    put(clock.seconds().count(), 2, millis != 0 ? '.' : 0);
    if (millis != 0)
        put(millis, 3, 0);
    text += time.offset.minutes < 0 ? '-' : '+';
    put(total / 60, 2, ':');
    put(total % 60, 2, 0);
    return text;
}

std::string formatLocalShort(const LocalTime &time)
{
    const Instant local = localInstant(time);
    return formatDate(CivilDate(floor<days>(local))) + " " + clockText(local, false);
}

std::optional<CivilDate> parseDate(std::string_view text)
{
    const auto y = digitsAt(text, 0, 4);
    const auto m = digitsAt(text, 5, 2);
    const auto d = digitsAt(text, 8, 2);
    if (text.size() != 10 || text[4] != '-' || text[7] != '-' || !y || !m || !d)
        return std::nullopt;
    const CivilDate date = year(*y) / month(static_cast<unsigned>(*m)) / day(static_cast<unsigned>(*d));
    return date.ok() ? std::optional(date) : std::nullopt;
}

std::optional<LocalTime> parseLocal(std::string_view text)
{
    if (text.size() < 20 || (text[10] != 'T' && text[10] != 't' && text[10] != ' '))
        return std::nullopt;
    const auto date = parseDate(text.substr(0, 10));
    const auto h = digitsAt(text, 11, 2);
    const auto m = digitsAt(text, 14, 2);
    const auto s = digitsAt(text, 17, 2);
    // A leap second is read as the second before it: no GPS log is worse for that.
    if (!date || !h || !m || !s || text[13] != ':' || text[16] != ':' || *h > 23 || *m > 59 || *s > 60)
        return std::nullopt;
    std::size_t at = 19;
    int millis = 0;
    if (text[at] == '.') {
        int scale = 100;
        for (++at; at < text.size() && text[at] >= '0' && text[at] <= '9'; ++at, scale /= 10)
            millis += (text[at] - '0') * scale;
        if (at == 20)
            return std::nullopt; // a point promises a digit
    }
    const auto offset = offsetAt(text.substr(at));
    if (!offset)
        return std::nullopt;
    const Instant local =
        startOfDay(*date) + hours(*h) + minutes(*m) + seconds(*s == 60 ? 59 : *s) + milliseconds(millis);
    return LocalTime{local - minutes(offset->minutes), ZoneOffset{offset->minutes}};
}

CivilDate civilDate(const LocalTime &time) { return CivilDate(floor<days>(localInstant(time))); }

CivilDate addMonths(CivilDate date, int count)
{
    CivilDate moved = date + months(count);
    if (!moved.ok())
        moved = moved.year() / moved.month() / last;
    return moved;
}

CivilDate addDays(CivilDate date, long long count) { return CivilDate(sys_days(date) + days(count)); }

long long daysBetween(CivilDate from, CivilDate to) { return (sys_days(to) - sys_days(from)).count(); }

LocalTime SystemClock::now() const
{
    const auto instant = floor<milliseconds>(system_clock::now());
    const std::time_t seconds = system_clock::to_time_t(instant);
    std::tm local{};
    localtime_r(&seconds, &local);
    return {instant, ZoneOffset{static_cast<int>(local.tm_gmtoff / 60)}};
}

} // namespace snugwalk
