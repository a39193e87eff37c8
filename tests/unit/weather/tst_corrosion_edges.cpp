// SPDX-License-Identifier: Apache-2.0
// Salt near the coast and laws of the corrosion functions over many airs.
#include <random>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "weather/laws/corrosion.hpp"

using namespace snugwalk;

namespace {

double saltAt(double km) { return chlorideNearCoast(kilometres(km)).value; }

} // namespace

// The form is that of [FELIU-1999]; the figures are common practice: 600 (300 to 1,500) at the surf, power
// 0.8 (1 to 0.6).
TEST_CASE("chloride falls with the distance and never leaves its range")
{
    CHECK(saltAt(0.01) == doctest::Approx(600));
    CHECK(saltAt(0.0) == saltAt(0.01)); // in the surf
    CHECK(saltAt(1) == doctest::Approx(600 / std::pow(100.0, 0.8)));
    CHECK(saltAt(1000) == 2.0);
    double last = 1e9;
    for (double km = 0.001; km < 5000; km *= 1.3) {
        const Estimate e = chlorideNearCoast(kilometres(km));
        CHECK(e.value <= last);
        CHECK(e.low <= e.value);
        CHECK(e.value <= e.high);
        CHECK(e.low >= 0.4);
        CHECK(e.high <= 760);
        last = e.value;
    }
    CHECK(chlorideNearCoast(chlorideFlatFrom).high == chlorideNearCoast(kilometres(5000)).high);
    CHECK(chlorideNearCoast(kilometres(1)).basis == "common_practice");
}

TEST_CASE("more salt, more sulfur or damper air never corrodes less, and classes follow the loss")
{
    std::mt19937 rng(41); // fixed: a failure must be repeatable
    std::uniform_real_distribution<double> t(-17, 29), rh(34, 90), dose(0, 100);
    for (int i = 0; i < 5000; ++i) {
        const Metal metal = metals[static_cast<std::size_t>(i) % metals.size()];
        const CorrosiveAir air{celsius(t(rng)), rh(rng), dose(rng), dose(rng)};
        const auto of = [&](const CorrosiveAir &a) { return corrosionRate(metal, a).value(); };
        const CorrosionRate base = of(air);
        CorrosiveAir more = air;
        more.chloride += 10;
        REQUIRE(of(more).firstYear.value >= base.firstYear.value);
        more = air;
        more.sulfur += 10;
        REQUIRE(of(more).firstYear.value >= base.firstYear.value);
        more = air;
        more.humidity += 3;
        REQUIRE(of(more).firstYear.value >= base.firstYear.value);
        REQUIRE(base.lowest <= base.category);
        REQUIRE(base.category <= base.highest);
        REQUIRE(corrosivityOf(metal, base.firstYear.value) == base.category);
    }
}
