// SPDX-License-Identifier: Apache-2.0
// Bleach in water: arithmetic on a ratio of common practice, no source.
#include "../sourced.hpp"

#include "base/units.hpp"
#include "bench/water/sanitizing.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

constexpr double gallon = 231.0 * 0.0254 * 0.0254 * 0.0254;
Volume gallons(double v) { return Volume::fromSi(v * gallon); }

} // namespace

TEST_CASE("a quarter cup of 5.25 % bleach in 15 gal is 54.7 ppm")
{
    SOURCED("CP", chlorineOf(gallons(15), gallons(1.0 / 64.0), 0.0525).value().value, 54.7, half(0.1));
}

TEST_CASE("40 gal at 50 ppm with 6 % bleach take 4.27 fl oz")
{
    const Estimate e = bleachVolume(gallons(40), usualPpm, 0.06).value();
    SOURCED("CP", e.value / (gallon / 128.0), 4.27, half(0.01));
    CHECK(e.high == doctest::Approx(1.15 * e.value));
    CHECK(e.warnings.empty());
}

TEST_CASE("outside 5 to 8.5 % and above 100 ppm it is told; beyond that it is refused by name")
{
    CHECK(bleachVolume(gallons(40), 50, 0.12).value().warnings == std::vector<std::string>{"bleach_unusual"});
    CHECK(bleachVolume(gallons(40), 150, 0.06).value().warnings == std::vector<std::string>{"dose_high"});
    CHECK(bleachVolume(gallons(40), 50, 6.0).error().where == "bleach"); // 6 typed for 6 %
    CHECK(bleachVolume(gallons(40), 0, 0.06).error().where == "ppm");
    CHECK(bleachVolume(gallons(0), 50, 0.06).error().where == "water");
}
