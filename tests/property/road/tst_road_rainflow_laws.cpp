// SPDX-License-Identifier: Apache-2.0
// Counting as it streams against the rules of [ASTM-E1049] 5.4.4 worked on a whole list, 2,000 random series.
#include <algorithm>
#include <random>
#include <vector>

#include <doctest/doctest.h>

#include "road/series/rainflow.hpp"

using namespace snugwalk;

namespace {

std::vector<double> turningPoints(const std::vector<double> &series)
{
    std::vector<double> distinct;
    for (const double v : series) {
        if (distinct.empty() || v != distinct.back())
            distinct.push_back(v);
    }
    std::vector<double> turns;
    for (std::size_t i = 0; i < distinct.size(); ++i) {
        const bool end = i == 0 || i + 1 == distinct.size();
        if (end || (distinct[i] > distinct[i - 1]) != (distinct[i + 1] > distinct[i]))
            turns.push_back(distinct[i]);
    }
    return turns.size() > 1 ? turns : std::vector<double>{};
}

// The standard's own steps, reading points one by one and striking them off the list.
std::vector<Cycle> byTheRules(const std::vector<double> &series)
{
    const std::vector<double> turns = turningPoints(series);
    std::vector<Cycle> cycles;
    std::vector<double> read;
    const auto note = [&](std::size_t i, double count) {
        cycles.push_back({std::abs(read[i] - read[i + 1]), (read[i] + read[i + 1]) / 2, count});
    };
    for (const double turn : turns) {
        read.push_back(turn);
        for (;;) {
            const std::size_t n = read.size();
            if (n < 3)
                break;
            const double x = std::abs(read[n - 1] - read[n - 2]);
            const double y = std::abs(read[n - 2] - read[n - 3]);
            if (x < y)
                break;
            if (n == 3) { // y holds the start: half a cycle, and the start moves on
                note(0, 0.5);
                read.erase(read.begin());
            } else {
                note(n - 3, 1.0);
                read.erase(read.end() - 3, read.end() - 1);
            }
        }
    }
    for (std::size_t i = 0; i + 1 < read.size(); ++i)
        note(i, 0.5);
    return cycles;
}

std::vector<Cycle> streamed(const std::vector<double> &series)
{
    std::vector<Cycle> cycles;
    const auto out = [&](const Cycle &c) { cycles.push_back(c); };
    Rainflow counter;
    for (const double v : series)
        counter.push(v, out);
    counter.finish(out);
    return cycles;
}

} // namespace

TEST_CASE("streamed and by the rules: the same cycles in the same order")
{
    std::mt19937 rng(2024);
    std::uniform_int_distribution<int> length(0, 300);
    for (int round = 0; round < 2000; ++round) {
        std::uniform_int_distribution<int> height(-3 - round % 40, 3 + round % 40);
        std::vector<double> series(static_cast<std::size_t>(length(rng)));
        for (double &v : series)
            v = height(rng);
        const auto wanted = byTheRules(series);
        const auto got = streamed(series);
        REQUIRE(got.size() == wanted.size());
        for (std::size_t i = 0; i < got.size(); ++i) {
            CHECK(got[i].range == wanted[i].range);
            CHECK(got[i].mean == wanted[i].mean);
            CHECK(got[i].count == wanted[i].count);
        }
    }
}

TEST_CASE("half cycles times two are the swings there were, and turning a series over changes no range")
{
    std::mt19937 rng(7);
    std::normal_distribution<double> normal;
    for (int round = 0; round < 200; ++round) {
        std::vector<double> series(500);
        for (double &v : series)
            v = normal(rng);
        double count = 0.0;
        for (const Cycle &c : streamed(series))
            count += c.count;
        CHECK(2 * count == static_cast<double>(turningPoints(series).size() - 1));
        std::vector<double> over = series;
        for (double &v : over)
            v = -v;
        const auto a = streamed(series);
        const auto b = streamed(over);
        REQUIRE(a.size() == b.size());
        for (std::size_t i = 0; i < a.size(); ++i) {
            CHECK(a[i].range == b[i].range);
            CHECK(a[i].mean == -b[i].mean);
        }
    }
}
