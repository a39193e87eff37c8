// SPDX-License-Identifier: Apache-2.0
// Laws of times and days over random ones, against the C library's calendar.
#include <doctest/doctest.h>

#include <ctime>
#include <random>

#include "base/time.hpp"

using namespace snugwalk;

namespace {

constexpr long long centuryMillis = 100LL * 366 * 86400 * 1000;

} // namespace

TEST_CASE("a local time written is read back to the millisecond and the minute of its zone")
{
    std::mt19937_64 rng(3339); // fixed: a failure must be repeatable
    std::uniform_int_distribution<long long> millis(-centuryMillis, centuryMillis);
    std::uniform_int_distribution<int> offset(-14 * 60, 14 * 60);
    for (int i = 0; i < 10000; ++i) {
        const LocalTime time{fromMillis(millis(rng)), ZoneOffset{offset(rng)}};
        const std::string text = formatLocal(time);
        CAPTURE(text);
        CHECK(parseLocal(text) == time);
        CHECK(parseLocal(formatInstant(time.instant))->instant == time.instant);
    }
}

TEST_CASE("instants are written as the C library's gmtime has them")
{
    std::mt19937_64 rng(1970);
    std::uniform_int_distribution<long long> seconds(-centuryMillis / 1000, centuryMillis / 1000);
    for (int i = 0; i < 10000; ++i) {
        const std::time_t when = seconds(rng);
        std::tm parts{};
        gmtime_r(&when, &parts);
        char expected[40];
        REQUIRE(std::strftime(expected, sizeof expected, "%Y-%m-%dT%H:%M:%SZ", &parts) > 0);
        CHECK(formatInstant(fromMillis(when * 1000)) == expected);
    }
}

TEST_CASE("days and months: there and back, never a day that is not")
{
    std::mt19937_64 rng(29);
    std::uniform_int_distribution<int> days(-40000, 40000);
    std::uniform_int_distribution<int> months(-400, 400);
    const CivilDate start = *parseDate("2024-02-29");
    for (int i = 0; i < 10000; ++i) {
        const int moved = days(rng);
        const CivilDate date = addDays(start, moved);
        CAPTURE(formatDate(date));
        CHECK(daysBetween(start, date) == moved);
        CHECK(parseDate(formatDate(date)) == date);
        const int count = months(rng);
        CAPTURE(count);
        const CivilDate later = addMonths(date, count);
        CHECK(later.ok());
        const int expected = static_cast<int>(date.year()) * 12 +
                             static_cast<int>(static_cast<unsigned>(date.month())) - 1 + count;
        CHECK(static_cast<int>(later.year()) * 12 + static_cast<int>(static_cast<unsigned>(later.month())) -
                  1 ==
              expected);
        CHECK(later.day() <= date.day());
        CHECK(static_cast<unsigned>(date.day()) - static_cast<unsigned>(later.day()) <= 3);
    }
}
