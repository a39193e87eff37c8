// SPDX-License-Identifier: Apache-2.0
// Roughness by distance: means are kept whatever the length, holes stay holes.
#include <algorithm>
#include <cmath>
#include <limits>

#include <doctest/doctest.h>

#include "road/accel/along_way.hpp"

using namespace snugwalk;

TEST_CASE("nothing driven has no stretches, a hole is nothing")
{
    AlongWay way;
    CHECK(way.means().empty());
    way.add(0, 100, 2.0);
    way.add(200, 300, 4.0);
    const auto means = way.means();
    REQUIRE(means.size() == 3);
    CHECK(means[0] == 2.0);
    CHECK(!means[1]);
    CHECK(means[2] == 4.0);
    CHECK(way.step().si() == 100.0);
}

TEST_CASE("a long way fits, and the mean by distance stays what it was")
{
    AlongWay way;
    double sum = 0.0;
    constexpr int windows = 8000; // 800 km
    for (int i = 0; i < windows; ++i) {
        const double index = 1.0 + (i % 7);
        way.add(100.0 * i, 100.0 * (i + 1), index);
        sum += index;
    }
    const auto means = way.means();
    CHECK(means.size() <= alongLimit);
    CHECK(means.size() > alongLimit / 2 - 1);
    const double step = way.step().si();
    CHECK(step * static_cast<double>(means.size()) >= 100.0 * windows);
    double told = 0.0;
    for (std::size_t i = 0; i < means.size(); ++i) {
        REQUIRE(means[i]);
        told += *means[i] * std::min(step, 100.0 * windows - step * static_cast<double>(i));
    }
    CHECK(std::abs(told / (100.0 * sum) - 1.0) < 1e-12);
}

TEST_CASE("what is no stretch of a way is left out")
{
    AlongWay way;
    way.add(-200, -100, 1.0);
    way.add(100, 100, 1.0);
    way.add(std::nan(""), 100, 1.0);
    way.add(0, std::numeric_limits<double>::infinity(), 1.0);
    CHECK(way.means().empty());
}
