// SPDX-License-Identifier: Apache-2.0
// What the bands promise, on points whose lives are known: one in ten outside on either side, and less harm
// than fixed intervals for as many looks. The laws are those of the product, so this checks the arithmetic
// and the calls, not nature.
#include <doctest/doctest.h>

#include <cstdio>

#include "simulated_fleet.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("the bands hold the day on which the rule truly fires in 78 to 82 % of 5,000 points")
{
    int inside = 0, before = 0, after = 0, none = 0, already = 0;
    constexpr int points = 5'000;
    for (unsigned seed = 0; inside + before + after < points; ++seed) {
        SimulatedPoint point(seed + 1, static_cast<int>(seed % 7));
        const auto truth = point.trueDay();
        const auto early = point.dayBy(0.1);
        const auto late = point.dayBy(0.9);
        if (!truth || !early || !late) {
            ++none;
            continue;
        }
        // Where over a tenth of the lives has it due at the look itself, the early edge is no quantile.
        if (*early < point.lastLook() + 0.5) {
            ++already;
            continue;
        }
        ++(*truth < *early ? before : *truth > *late ? after : inside);
    }
    std::printf(
        "inside %d, before %d, after %d; left out: due at the look itself %d, beyond sixty years %d\n",
        inside, before, after, already, none);
    const double share = static_cast<double>(inside) / static_cast<double>(inside + before + after);
    CHECK(share >= 0.78);
    CHECK(share <= 0.82);
    CHECK(none < 60);
    CHECK(already < points / 2);
}

TEST_CASE("for as many looks, bands leave less harm than fixed intervals")
{
    constexpr unsigned points = 1'000;
    constexpr double years = 12.0 * 365.0;
    SimulatedPoint::Course bands;
    for (unsigned seed = 0; seed < points; ++seed) {
        SimulatedPoint point(seed + 50'001, 3);
        const auto course = point.bandCourse(0.5, point.now() + years);
        bands.looks += course.looks;
        bands.harm += course.harm;
    }
    // the factor on the catalogue's intervals that takes as many looks
    double low = 0.2, high = 5.0;
    SimulatedPoint::Course fixed;
    for (int i = 0; i < 10; ++i) {
        const double factor = (low + high) / 2.0;
        fixed = {};
        for (unsigned seed = 0; seed < points; ++seed) {
            SimulatedPoint point(seed + 50'001, 3);
            const auto course = point.fixedCourse(factor, point.now() + years);
            fixed.looks += course.looks;
            fixed.harm += course.harm;
        }
        (fixed.looks > bands.looks ? low : high) = factor;
    }
    std::printf("bands: %d looks, harm %.0f; fixed intervals: %d looks, harm %.0f; ratio %.3f\n", bands.looks,
                bands.harm, fixed.looks, fixed.harm, bands.harm / fixed.harm);
    CHECK(std::abs(fixed.looks - bands.looks) < bands.looks / 50);
    CHECK(bands.harm < fixed.harm);
}
