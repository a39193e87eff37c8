// SPDX-License-Identifier: Apache-2.0
// Sums in scale for the smallest and the largest ranges, and the stack's bound. [MINER-1945]
#include <cmath>
#include <random>

#include <doctest/doctest.h>

#include "road/series/damage.hpp"

using namespace snugwalk;

TEST_CASE("levels neither overflow nor vanish")
{
    for (const double unit : {1e-200, 1e-30, 1.0, 1e30, 1e200}) {
        Damage damage = Damage::make({2, 6, 20}).value();
        damage.add(3 * unit, 1);
        damage.add(4 * unit, 1);
        const auto sums = damage.sums();
        CHECK(std::abs(sums[0].level / (5 * unit) - 1.0) < 1e-12);
        CHECK(std::abs(sums[2].level / unit / std::pow(std::pow(3.0, 20) + std::pow(4.0, 20), 0.05) - 1.0) <
              1e-12);
    }
    Damage damage = Damage::make({6}).value();
    damage.add(1e200, 1);
    CHECK(std::isinf(damage.sums()[0].sum));
}

TEST_CASE("exponents need not be whole, and odd ones are refused")
{
    Damage damage = Damage::make({2.5}).value();
    damage.add(4, 0.5);
    damage.add(0, 1);
    CHECK(std::abs(damage.sums()[0].sum - 16) < 1e-12);
    CHECK(!Damage::make({}));
    CHECK(!Damage::make({0}));
    CHECK(!Damage::make({NAN}));
    CHECK(!Damage::make({21}));
    CHECK(!Damage::make(std::vector<double>(17, 2.0)));
}

TEST_CASE("nothing, one value and a plateau have no cycles")
{
    int cycles = 0;
    const auto out = [&](const Cycle &) { ++cycles; };
    Rainflow counter;
    counter.finish(out);
    counter.push(3, out);
    counter.finish(out);
    for (int i = 0; i < 10; ++i)
        counter.push(3, out);
    counter.finish(out);
    CHECK(cycles == 0);
    counter.push(3, out);
    counter.push(4, out);
    counter.push(4, out);
    counter.finish(out);
    CHECK(cycles == 1);
}

TEST_CASE("a swing that dies away for a million turns keeps the stack small, and its damage within one cycle")
{
    constexpr int turns = 1'000'000;
    const auto at = [](int i) { return (i % 2 == 0 ? 1.0 : -1.0) * (1.0 - 0.5 * i / turns); };
    Damage damage = Damage::make({2, 4}).value();
    Rainflow counter;
    std::size_t deepest = 0;
    for (int i = 0; i < turns; ++i) {
        counter.push(at(i), [&](const Cycle &c) { damage.add(c); });
        deepest = std::max(deepest, counter.nested());
    }
    counter.finish([&](const Cycle &c) { damage.add(c); });
    CHECK(deepest <= Rainflow::limit);
    // all of it nests: by the rule each range is half a cycle
    double exact2 = 0.0;
    double exact4 = 0.0;
    for (int i = 1; i < turns; ++i) {
        const double range = std::abs(at(i) - at(i - 1));
        exact2 += 0.5 * range * range;
        exact4 += 0.5 * std::pow(range, 4);
    }
    CHECK(std::abs(damage.sums()[0].sum / exact2 - 1.0) < 0.01);
    CHECK(std::abs(damage.sums()[1].sum / exact4 - 1.0) < 0.01);
}
