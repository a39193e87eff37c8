// SPDX-License-Identifier: Apache-2.0
// The weighting Wk of [ISO-2631-1], thousandths at nominal thirds of an octave; table from memory.
#include <cmath>

#include <doctest/doctest.h>

#include "road/series/comfort.hpp"

using namespace snugwalk;

TEST_CASE("Wk at nominal thirds, computed and as printed")
{
    constexpr double rows[][3] = {
        {0.5, 418.2, 418},   {0.8, 477.0, 477},  {1, 482.5, 482},  {1.6, 494.2, 494},
        {2, 531.4, 531},     {2.5, 630.5, 631},  {4, 967.2, 967},  {5, 1038.8, 1039},
        {6.3, 1054.4, 1054}, {8, 1036.4, 1036},  {10, 988.4, 988}, {12.5, 902.3, 902},
        {20, 635.9, 636},    {31.5, 404.8, 405}, {63, 186.1, 186}, {80, 132.4, 132}};
    for (const auto &row : rows) {
        const double hz = row[0], computed = row[1], printed = row[2];
        INFO(hz, " Hz: ", 1000 * comfortWeight(hz));
        CHECK(std::abs(1000 * comfortWeight(hz) - computed) < 0.05);
        CHECK(std::abs(1000 * comfortWeight(hz) - printed) < 0.5);
    }
    // the table, from memory, has 768 here, where the formula that it comes from gives 768.7
    CHECK(std::abs(1000 * comfortWeight(16) - 768.7) < 0.05);
    CHECK(std::abs(1000 * comfortWeight(16) - 768) < 0.7);
    CHECK(comfortWeight(0.0) == 0.0);
}

TEST_CASE("a sine of 1 m/s^2 rms at 5 Hz weighs 1.0388 m/s^2")
{
    Welch welch = Welch::make(100, 1000).value();
    for (int i = 0; i < 10'000; ++i)
        welch.add(std::sqrt(2.0) * std::sin(2 * 3.14159265358979 * 5 * i / 100.0));
    const auto s = welch.finish();
    REQUIRE(s);
    CHECK(std::abs(comfortRms(*s) - 1.0388) < 0.001);
}
