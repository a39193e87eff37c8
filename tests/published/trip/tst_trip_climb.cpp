// SPDX-License-Identifier: Apache-2.0
// Ascent and descent: a worked example of our own, computed by hand; no outside source is known.
#include <iterator>

#include <doctest/doctest.h>

#include "trip/climb.hpp"

using snugwalk::Climb;

TEST_CASE("the worked series climbs and falls 31 m, where naive sums say 42")
{
    const double z[] = {100, 101, 99,  102, 100, 103, 110, 121, 119, 122,
                        120, 131, 128, 129, 117, 105, 104, 106, 103, 100};
    double naive = 0.0;
    for (std::size_t i = 1; i < std::size(z); ++i)
        naive += z[i] > z[i - 1] ? z[i] - z[i - 1] : 0.0;
    CHECK(naive == 42.0);
    for (const double threshold : {3.0, 5.0}) {
        Climb climb(threshold);
        for (const double altitude : z)
            climb.add(altitude);
        CHECK(climb.up() == 31.0);
        CHECK(climb.down() == 31.0);
    }
}

TEST_CASE("the reference is the first point, and rises less the falls lead to the last")
{
    Climb still(5.0);
    for (const double altitude : {0.0, 4.9, 0.1, 4.9, -0.1, 4.8})
        still.add(altitude); // never 5 m from the first
    CHECK(still.up() == 0.0);
    CHECK(still.down() == 0.0);

    Climb hill(10.0);
    for (const double altitude : {500.0, 509.0, 511.0, 530.0, 521.0, 519.0, 480.0})
        hill.add(altitude);
    CHECK(hill.up() == 30.0);
    CHECK(hill.down() == 50.0);
}
