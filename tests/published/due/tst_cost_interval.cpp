// SPDX-License-Identifier: Apache-2.0
// Looking for what only costs: root and minimiser of SciPy 1.10 for the model of [BARLOW-PROSCHAN-1965];
// looks within a warning time as in [SAE-JA1011].
#include <doctest/doctest.h>

#include <cmath>
#include <initializer_list>

#include "due/life/cost_interval.hpp"

using namespace snugwalk;
using doctest::Approx;

TEST_CASE("rate 0.02, look 1, unseen 2 a unit of time")
{
    constexpr LookCosts costs{0.02, 1.0, 2.0};
    const double interval = cheapestInterval(costs);
    CHECK(interval == Approx(6.9082561).epsilon(1e-8));
    CHECK(std::sqrt(2.0 * costs.look / (costs.rate * costs.unseen)) == Approx(7.0710678).epsilon(1e-8));
    CHECK(costUntilFound(costs, interval) == Approx(14.816512).epsilon(1e-7));
    CHECK(costUntilFound(costs, interval * 1.01) > costUntilFound(costs, interval));
    CHECK(costUntilFound(costs, interval * 0.99) > costUntilFound(costs, interval));
}

TEST_CASE("the condition of least cost holds from rare to daily failures")
{
    for (const double rate : {1e-9, 1e-4, 0.3, 20.0, 5000.0}) {
        CAPTURE(rate);
        const double x = rate * cheapestInterval({rate, 3.0, 0.5});
        CHECK(std::expm1(x) - x == Approx(rate * 6.0).epsilon(1e-6));
    }
}

TEST_CASE("looks within the warning time")
{
    CHECK(seenByOneOf(1, 0.7) == Approx(0.70));
    CHECK(seenByOneOf(2, 0.7) == Approx(0.91));
    CHECK(seenByOneOf(3, 0.7) == Approx(0.973));
    CHECK(seenByOneOf(1, 0.9) == Approx(0.9));
    CHECK(seenByOneOf(2, 0.9) == Approx(0.99));
    CHECK(seenByOneOf(3, 0.9) == Approx(0.999));
    CHECK(seenByOneOf(0, 0.9) == 0.0);
    CHECK(longestInterval(12.0) == 6.0);
}
