// SPDX-License-Identifier: Apache-2.0
// Figures of a paired comparison, against SciPy 1.10 (stats.norm, binomtest, beta), computed apart from this
// code, and the worked example of the paper that the step-up rule comes from.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "compare/readings.hpp"
#include "compare/statistics.hpp"

using namespace snugwalk;
using doctest::Approx;

namespace {

Reading tread(double mm) { return {"tread-depth", "wheel 1L", Dimension::Length, mm * 1e-3, "mm"}; }

} // namespace

TEST_CASE("6.1 to 5.6 mm, 0.25 mm each: z, its p, and what can be told apart at all")
{
    // z = -0.5 / sqrt(2 0.25^2); 2 scipy.stats.norm.cdf(z); 1.959964 sqrt(2) 0.25 prints 0.69296 with 1.96
    const ReadingChange c = compareReading(tread(6.1), tread(5.6), 1.6e-3, {});
    CHECK(c.z == Approx(-1.414214).epsilon(1e-6));
    CHECK(twoSidedP(c.z) == Approx(0.1572992).epsilon(1e-6));
    CHECK(twoSidedP(c.z) / 2.0 == Approx(0.0786).epsilon(1e-3)); // to one side
    CHECK_FALSE(c.changed);
    CHECK(1.96 * c.uncertainty * 1e3 == Approx(0.69296).epsilon(1e-5));
}

TEST_CASE("6.1 to 5.6 mm where 0.6 mm of wear were expected: not faster")
{
    // z_e = (-0.5 + 0.6) / sqrt(0.25^2 + 0.25^2 + 0^2)
    ReadingChange c = compareReading(tread(6.1), tread(5.6), 1.6e-3, {});
    holdAgainst(c, {-0.6e-3, 0.0, "slope"}, -1.0);
    REQUIRE(c.expected);
    CHECK(c.expectedZ == Approx(0.2828).epsilon(1e-4));
    CHECK_FALSE(c.faster);
    c = compareReading(tread(6.1), tread(4.9), 1.6e-3, {}); // 1.2 mm gone where 0.6 were expected
    holdAgainst(c, {-0.6e-3, 0.0, "slope"}, -1.0);
    CHECK(c.expectedZ == Approx(-1.697056).epsilon(1e-6));
    CHECK(c.faster);
    holdAgainst(c, {-0.6e-3, 0.1e-3, "slope"}, -1.0); // not when the expectation itself is in doubt
    CHECK(c.expectedZ == Approx(-0.6 / std::sqrt(0.135)).epsilon(1e-6));
    CHECK_FALSE(c.faster);
}

TEST_CASE("exact test of pairs: two got better, seven worse")
{
    // [MCNEMAR-1947]; scipy.stats.binomtest(2, 9).pvalue = 92/512
    CHECK(mcnemarExact(2, 7) == Approx(0.1796875).epsilon(1e-12));
    CHECK(mcnemarExact(7, 2) == Approx(0.1796875).epsilon(1e-12));
    CHECK(mcnemarExact(0, 6) == Approx(2.0 / 64.0).epsilon(1e-12));
    CHECK(mcnemarExact(4, 4) == 1.0);
    CHECK(mcnemarExact(0, 0) == 1.0);
}

TEST_CASE("the chance that the rate went up: two better, seven worse")
{
    // prior of [JEFFREYS-1946]; scipy.stats.beta(7.5, 2.5).sf(0.5)
    CHECK(chanceRateUp(2, 7) == Approx(0.954969).epsilon(1e-6));
    CHECK(chanceRateUp(7, 2) == Approx(1.0 - 0.954969).epsilon(2e-5));
    CHECK(chanceRateUp(3, 3) == Approx(0.5).epsilon(1e-12));
}

TEST_CASE("fifteen tests of which four stand")
{
    // the example of [BENJAMINI-HOCHBERG-1995], section 4.1 (from memory): four stand at 0.05
    const std::vector<double> p = {0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344,
                                   0.0459, 0.3240, 0.4262, 0.5719, 0.6528, 0.7590, 1.0000};
    const auto stand = standAmongMany(p, 0.05);
    CHECK(std::count(stand.begin(), stand.end(), true) == 4);
    CHECK(std::all_of(stand.begin(), stand.begin() + 4, [](bool s) { return s; }));
    // at 0.10 the ninth, 0.0459 <= 0.10 * 9 / 15, carries all before it
    const auto more = standAmongMany(p, 0.10);
    CHECK(std::count(more.begin(), more.end(), true) == 9);
    std::vector<double> back(p.rbegin(), p.rend());
    CHECK(standAmongMany(back, 0.05).back());
    CHECK_FALSE(standAmongMany(back, 0.05).front());
    CHECK(standAmongMany({}, 0.1).empty());
}
