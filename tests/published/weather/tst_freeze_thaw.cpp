// SPDX-License-Identifier: Apache-2.0
// Freeze-thaw cycles. The twelve days and their counts were computed apart with a plain state machine; counts
// are exact.
#include <cmath>
#include <vector>

#include <doctest/doctest.h>

#include "weather/laws/freeze_thaw.hpp"

using namespace snugwalk;

namespace {

using Days = std::vector<std::optional<DayRange>>;

Days twelve()
{
    const double low[] = {2, -1, -3, -5, -8, -6, -2, 0, 1, -1, -0.5, 3};
    const double high[] = {9, 4, 1, -1, -2, 0.5, 3, 6, 8, 5, 2, 10};
    Days days;
    for (int i = 0; i < 12; ++i)
        days.emplace_back(DayRange{celsius(low[i]), celsius(high[i])});
    return days;
}

int count(const Days &days, double frozen, double thawed)
{
    return freezeThaw(days, {celsius(frozen), celsius(thawed)}).value().cycles;
}

} // namespace

TEST_CASE("cycles of twelve days with three pairs of limits")
{
    CHECK(count(twelve(), 0, 0) == 6);
    CHECK(count(twelve(), -1, 1) == 1);
    CHECK(count(twelve(), -2, 0) == 2);
    int naive = 0;
    for (const auto &day : twelve())
        naive += day->low < celsius(0) && day->high > celsius(0) ? 1 : 0;
    CHECK(naive == 6);
}

// The same days as 9, 2, 4, -1, ... with the limits walked by hand.
TEST_CASE("cycles with each day's high before its low")
{
    const auto highFirst = [](double frozen, double thawed) {
        return freezeThaw(twelve(), {celsius(frozen), celsius(thawed)}).value().highFirst;
    };
    CHECK(highFirst(0, 0) == 6);
    CHECK(highFirst(-1, 1) == 2);
    CHECK(highFirst(-2, 0) == 2);
}

TEST_CASE("a missing day breaks the chain and is told")
{
    Days days = twelve();
    days[6]
        .reset(); // frozen until the fifth day, thawed on the seventh: with that day missing, nobody saw it
    const FreezeThaw seen = freezeThaw(days).value();
    CHECK(seen.missing == 1);
    CHECK(seen.days == 11);
    CHECK(seen.cycles == 0);
}

TEST_CASE("low above high is taken the other way round and counted")
{
    Days days = twelve();
    for (auto &day : days)
        std::swap(day->low, day->high);
    const FreezeThaw seen = freezeThaw(days, {celsius(0), celsius(0)}).value();
    CHECK(seen.cycles == 6);
    CHECK(seen.swapped == 12);
}

TEST_CASE("limits the wrong way round, and no days")
{
    CHECK(freezeThaw(twelve(), {celsius(1), celsius(-1)}).error().where == "limits");
    CHECK(freezeThaw(twelve(), {celsius(std::nan("")), celsius(0)}).error().where == "limits");
    CHECK(freezeThaw({}).value().cycles == 0);
}

TEST_CASE("a counter fed day by day counts like the whole")
{
    FreezeThawCounter counter({celsius(0), celsius(0)});
    int cycles = 0;
    for (const auto &day : twelve())
        cycles += counter.add(*day);
    CHECK(cycles == 6);
}

// Φ((-1 + 5)/4.5) - Φ((1 - 5)/4.5) = 2 Φ(0.8889) - 1 = 0.62592 by tables of the normal distribution (Φ(0.89)
// = 0.81327, Φ(0.88) = 0.81057 in any printed table).
TEST_CASE("what to expect of a normal day")
{
    CHECK(expectedFreezeThaw({celsius(-5), celsius(5)}) == doctest::Approx(2 * 0.81297 - 1).epsilon(1e-3));
    CHECK(expectedFreezeThaw({celsius(20), celsius(30)}) < 1e-5);
    CHECK(expectedFreezeThaw({celsius(-40), celsius(-30)}) < 1e-5);
    CHECK(expectedFreezeThaw({celsius(-0.5), celsius(0.5)}) == 0.0); // never both in one day
    // a wider day never has fewer
    for (double range = 0; range < 30; range += 1)
        CHECK(expectedFreezeThaw({celsius(2 - range / 2), celsius(2 + range / 2)}) <=
              expectedFreezeThaw({celsius(1.5 - range / 2), celsius(2.5 + range / 2)}));
}
