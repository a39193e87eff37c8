// SPDX-License-Identifier: Apache-2.0
// Three figures of a rig that no average can hide an item in.
#include <doctest/doctest.h>

#include <array>
#include <numeric>

#include "concern/outlook.hpp"

using namespace snugwalk;

namespace {

PointConcern item(const std::string &name, Severity severity, double consequence, double chance, bool looked)
{
    PointConcern c;
    c.point = name;
    c.severity = severity;
    c.consequence = consequence;
    c.chance = {chance, chance / 2.0, chance * 1.5};
    c.risk = consequence * chance;
    c.current = looked;
    return c;
}

} // namespace

TEST_CASE("four items: at least one fails, and what is lost")
{
    // p .02 .05 .30 .01, C 1 2 5 .5: 1 - product = .354817, sum of R = 1.625 (worked by hand)
    const std::array p = {0.02, 0.05, 0.30, 0.01};
    CHECK(std::abs(atLeastOne(p) - 0.354817) < 5e-7);
    std::vector<PointConcern> points;
    const std::array c = {1.0, 2.0, 5.0, 0.5};
    for (std::size_t i = 0; i < p.size(); ++i)
        points.push_back(item(std::to_string(i), Severity::II, c[i], p[i], true));
    const Outlook outlook = outlookOf(points);
    CHECK(outlook.loss.value == doctest::Approx(1.625));
    CHECK(std::abs(outlook.serious.value - 0.354817) < 5e-7);
    CHECK(outlook.expected.value == doctest::Approx(0.38));
    // the mean chance, .095, would hide the third item
    CHECK(std::accumulate(p.begin(), p.end(), 0.0) / 4.0 == doctest::Approx(0.095));
    CHECK(outlook.serious.low < outlook.serious.value);
    CHECK(outlook.serious.value < outlook.serious.high);
}

TEST_CASE("tiny chances are not lost, sure ones give one, none gives none")
{
    const std::array tiny = {1e-18, 2e-18};
    CHECK(atLeastOne(tiny) == doctest::Approx(3e-18).epsilon(1e-12));
    const std::array sure = {0.2, 1.0};
    CHECK(atLeastOne(sure) == 1.0);
    CHECK(atLeastOne({}) == 0.0);
}

TEST_CASE("only severity I and II are serious; the share looked at goes by weight")
{
    // weight = C times the share failed at the interval: 100 x .01, 10 x .03, 1 x .10, .1 x .25
    const std::vector<PointConcern> points = {
        item("a", Severity::I, 100, 0.1, true), item("b", Severity::II, 10, 0.1, false),
        item("c", Severity::III, 1, 0.9, false), item("d", Severity::IV, 0.1, 0.9, true)};
    const Outlook outlook = outlookOf(points);
    CHECK(outlook.seriousItems == 2);
    CHECK(outlook.serious.value == doctest::Approx(0.19));
    CHECK(outlook.weight == doctest::Approx(1.0 + 0.3 + 0.1 + 0.025));
    CHECK(outlook.looked == doctest::Approx(1.025 / 1.425));
}
