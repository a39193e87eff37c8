// SPDX-License-Identifier: Apache-2.0
// Times as written and read, days as people count them, and the clock that stands still.
#include <doctest/doctest.h>

#include "base/time.hpp"

using namespace snugwalk;

namespace {

CivilDate day(const char *text)
{
    const auto date = parseDate(text);
    REQUIRE(date);
    return *date;
}

LocalTime local(const char *text)
{
    const auto time = parseLocal(text);
    REQUIRE(time);
    return *time;
}

} // namespace

TEST_CASE("an instant prints milliseconds only when there are any")
{
    CHECK(formatInstant(fromMillis(0)) == "1970-01-01T00:00:00Z");
    CHECK(formatInstant(fromMillis(1)) == "1970-01-01T00:00:00.001Z");
    CHECK(formatInstant(fromMillis(-1)) == "1969-12-31T23:59:59.999Z");
    CHECK(toMillis(fromMillis(1234567890123)) == 1234567890123);
}

TEST_CASE("a local time keeps the clock that the person saw")
{
    const LocalTime time = local("2026-11-24T21:10:00+13:00");
    CHECK(formatInstant(time.instant) == "2026-11-24T08:10:00Z");
    CHECK(time.offset.minutes == 780);
    CHECK(formatLocal(time) == "2026-11-24T21:10:00+13:00");
    CHECK(formatLocalShort(time) == "2026-11-24 21:10");
    CHECK(formatDate(civilDate(time)) == "2026-11-24");
}

TEST_CASE("the day is that of the place, not that of UTC")
{
    CHECK(formatDate(civilDate(local("2026-11-25T08:00:00+13:00"))) == "2026-11-25");
    CHECK(formatInstant(local("2026-11-25T08:00:00+13:00").instant) == "2026-11-24T19:00:00Z");
    CHECK(formatDate(civilDate(local("2026-01-01T20:00:00-07:00"))) == "2026-01-01");
    CHECK(formatLocal(local("2026-01-01T20:00:00-03:30")) == "2026-01-01T20:00:00-03:30");
}

TEST_CASE("a time without a zone, or one that cannot be, is refused")
{
    for (const std::string refused : {"",
                                      "2026-11-24",
                                      "2026-11-24T08:10:00",
                                      "2026-11-24T08:10Z",
                                      "2026-13-01T00:00:00Z",
                                      "2026-02-29T00:00:00Z",
                                      "2026-11-24T24:00:00Z",
                                      "2026-11-24T08:60:00Z",
                                      "2026-11-24T08:10:61Z",
                                      "2026-11-24T08:10:00+15:00",
                                      "2026-11-24T08:10:00+0100",
                                      "2026-11-24T08:10:00+01:60",
                                      "2026-11-24T08:10:00.Z",
                                      "2026-11-24T08:10:00.5",
                                      "2026-11-24T08:10:00,5Z",
                                      "2026-11-24T08:10:00Zx",
                                      "2026/11/24T08:10:00Z",
                                      "+2026-11-24T08:10:00Z",
                                      "2026-11-24T8:10:00Z ",
                                      "2026-11-24X08:10:00Z"}) {
        CAPTURE(refused);
        CHECK_FALSE(parseLocal(refused));
    }
}

TEST_CASE("digits beyond the millisecond are cut, not rounded into the next second")
{
    CHECK(formatInstant(local("2026-11-24T08:10:00.9999Z").instant) == "2026-11-24T08:10:00.999Z");
    CHECK(formatInstant(local("2026-11-24T08:10:00.5Z").instant) == "2026-11-24T08:10:00.500Z");
    CHECK(formatInstant(local("2026-11-24T08:10:00.05Z").instant) == "2026-11-24T08:10:00.050Z");
}

TEST_CASE("a month after its last day is the last day of the next")
{
    CHECK(formatDate(addMonths(day("2026-01-31"), 1)) == "2026-02-28");
    CHECK(formatDate(addMonths(day("2024-01-31"), 1)) == "2024-02-29");
    CHECK(formatDate(addMonths(day("2024-02-29"), 12)) == "2025-02-28");
    CHECK(formatDate(addMonths(day("2024-02-29"), 48)) == "2028-02-29");
    CHECK(formatDate(addMonths(day("2026-03-31"), -1)) == "2026-02-28");
    CHECK(formatDate(addMonths(day("2026-08-31"), 3)) == "2026-11-30");
    CHECK(formatDate(addMonths(day("2026-11-15"), 2)) == "2027-01-15");
    CHECK(formatDate(addMonths(day("2026-01-15"), -1)) == "2025-12-15");
}

TEST_CASE("leap days are those of the Gregorian rule")
{
    // 1900 and 2100 are common years, 2000 a leap year: every 400 years, not every 100
    CHECK_FALSE(parseDate("1900-02-29"));
    CHECK(parseDate("2000-02-29"));
    CHECK_FALSE(parseDate("2100-02-29"));
    CHECK(parseDate("2024-02-29"));
    CHECK(formatDate(addDays(day("2024-02-28"), 1)) == "2024-02-29");
    CHECK(formatDate(addDays(day("2026-02-28"), 1)) == "2026-03-01");
    CHECK(daysBetween(day("2024-01-01"), day("2025-01-01")) == 366);
    CHECK(daysBetween(day("2026-01-01"), day("2025-01-01")) == -365);
}

TEST_CASE("dates are written one way only")
{
    for (const std::string refused :
         {"", "2026-1-1", "2026-00-10", "2026-04-31", "2026-11-24 ", "24-11-2026", "2026.11.24"}) {
        CAPTURE(refused);
        CHECK_FALSE(parseDate(refused));
    }
    CHECK(formatInstant(startOfDay(day("2026-11-24"))) == "2026-11-24T00:00:00Z");
}

TEST_CASE("a fixed clock stands where it is put")
{
    FixedClock clock(local("2026-11-24T21:10:00+13:00"));
    CHECK(formatLocal(clock.now()) == "2026-11-24T21:10:00+13:00");
    clock.advance(std::chrono::minutes(5));
    CHECK(formatLocal(clock.now()) == "2026-11-24T21:15:00+13:00");
    clock.set(local("2026-11-25T00:00:00Z"));
    CHECK(formatLocal(clock.now()) == "2026-11-25T00:00:00+00:00");
}

TEST_CASE("the machine's clock is past the day this was written, in the zone of the test")
{
    const LocalTime now = SystemClock().now();
    CHECK(now.instant > local("2024-01-01T00:00:00Z").instant);
    CHECK(now.offset.minutes == 0); // TZ=UTC, set by CTest
}
