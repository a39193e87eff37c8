// SPDX-License-Identifier: Apache-2.0
// [49CFR574] 574.5: week and year, four digits from 2000 on, week 1 the first full one. Dates beside it
// worked by the calendar.
#include "../sourced.hpp"

#include "bench/tires/tire_age.hpp"

using namespace snugwalk;

namespace {

std::string madeOn(const char *code) { return formatDate(tireMade(code).value().date); }
CivilDate day(const char *text) { return parseDate(text).value(); }

} // namespace

TEST_CASE("2319 is the week of 2019-06-09 and 7.5 years old on 2026-11-24")
{
    CHECK(madeOn("2319") == "2019-06-09");
    const Estimate age = tireAge(tireMade("2319").value(), day("2026-11-24")).value();
    SOURCED("49CFR574", age.value, 7.5, 0.05);
    CHECK(age.warnings == std::vector<std::string>{"tire_review"});
    CHECK(age.high - age.low == doctest::Approx(14.0 / 365.2425));
}

TEST_CASE("the code is found at the end of what stands before it")
{
    CHECK(madeOn("DOT U2LL LMLR 5107") == "2007-12-23");
    CHECK(madeOn("LMLR5107") == "2007-12-23");
    CHECK(madeOn(" 0100 ") == "2000-01-02");
    CHECK(madeOn("5323") == "2023-12-31"); // 2023 has 53 Sundays
}

TEST_CASE("three digits are from before 2000, and so old that it does not matter which ten years")
{
    const TireMade made = tireMade("419").value();
    CHECK(made.beforeTwoThousand);
    const Estimate age = tireAge(made, day("2026-11-24")).value();
    CHECK(age.value > 26.8);
    CHECK(age.warnings == std::vector<std::string>{"before_2000", "tire_retire"});
}

TEST_CASE("what is no code, or not made yet, is refused")
{
    for (const char *bad : {"", "19", "231", "5419", "0019", "23 19", "2319x", "week 23"}) {
        CAPTURE(bad);
        const auto made = tireMade(bad);
        if (std::string(bad) != "231") // week 23 of a year that ends in 1
            CHECK(made.error().where == "code");
    }
    CHECK(tireAge(tireMade("2319").value(), day("2019-01-01")).error().where == "code");
}
