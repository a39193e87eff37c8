// SPDX-License-Identifier: Apache-2.0
// Cycles of the example of [ASTM-E1049], figure 6, from memory, and computed with another program;
// their damage by [MINER-1945], computed.
#include <cmath>
#include <map>
#include <vector>

#include <doctest/doctest.h>

#include "road/series/damage.hpp"

using namespace snugwalk;

namespace {

std::vector<Cycle> figure6()
{
    std::vector<Cycle> cycles;
    const auto out = [&](const Cycle &c) { cycles.push_back(c); };
    Rainflow counter;
    for (const double v : {-2, 1, -3, 5, -1, 3, -4, 4, -2})
        counter.push(v, out);
    counter.finish(out);
    return cycles;
}

} // namespace

TEST_CASE("cycles of figure 6 in the order in which they close")
{
    constexpr double wanted[][3] = {{3, -0.5, .5}, {4, -1, .5}, {4, 1, 1}, {8, 1, .5},
                                    {9, 0.5, .5},  {8, 0, .5},  {6, 1, .5}};
    const auto cycles = figure6();
    REQUIRE(cycles.size() == 7);
    std::map<double, double> table;
    for (std::size_t i = 0; i < 7; ++i) {
        CHECK(cycles[i].range == wanted[i][0]);
        CHECK(cycles[i].mean == wanted[i][1]);
        CHECK(cycles[i].count == wanted[i][2]);
        table[cycles[i].range] += cycles[i].count;
    }
    CHECK(table == std::map<double, double>{{3, .5}, {4, 1.5}, {6, .5}, {8, 1}, {9, .5}});
}

TEST_CASE("damage sums and levels of figure 6")
{
    constexpr double rows[][4] = {{3, 1094, 10.303998, 6.491112},
                                  {4, 8449, 9.587411, 6.779323},
                                  {5, 67838, 9.253257, 7.012657},
                                  {8, 39241969, 8.896493, 7.481029}};
    Damage damage = Damage::make({3, 4, 5, 8}).value();
    for (const Cycle &cycle : figure6())
        damage.add(cycle);
    const auto sums = damage.sums();
    REQUIRE(sums.size() == 4);
    for (std::size_t i = 0; i < 4; ++i) {
        CHECK(sums[i].exponent == rows[i][0]);
        CHECK(std::abs(sums[i].sum / rows[i][1] - 1.0) < 1e-12);
        CHECK(std::abs(sums[i].level - rows[i][2]) < 5e-7);
        CHECK(std::abs(sums[i].level / std::pow(4.0, 1.0 / rows[i][0]) - rows[i][3]) < 5e-7); // over 4 cycles
    }
}

TEST_CASE("doubling every range multiplies damage by 2^m: 4, 8, 16, 32, 181, 256")
{
    const std::vector<double> exponents = {2, 3, 4, 5, 7.5, 8};
    constexpr double factors[][2] = {{4, 2.25}, {8, 3.375}, {16, 5.06}, {32, 7.59}, {181, 20.9}, {256, 25.6}};
    constexpr double digits[][2] = {{1e-9, 1e-9}, {1e-9, 1e-9}, {1e-9, .005},
                                    {1e-9, .005}, {.5, .05},    {1e-9, .05}};
    Damage once = Damage::make(exponents).value();
    Damage twice = Damage::make(exponents).value();
    Damage half = Damage::make(exponents).value();
    for (const Cycle &c : figure6()) {
        once.add(c);
        twice.add(2.0 * c.range, c.count);
        half.add(1.5 * c.range, c.count);
    }
    for (std::size_t i = 0; i < exponents.size(); ++i) {
        CHECK(std::abs(twice.sums()[i].sum / once.sums()[i].sum - factors[i][0]) <= digits[i][0] * 1.001);
        CHECK(std::abs(half.sums()[i].sum / once.sums()[i].sum - factors[i][1]) <= digits[i][1] * 1.001);
    }
}
