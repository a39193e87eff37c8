// SPDX-License-Identifier: Apache-2.0
// Cure and life of sealant: common practice, no source, each row. Dew point [ALDUCHOV-ESKRIDGE-1996].
#include "../sourced.hpp"

#include <cmath>

#include "base/units.hpp"
#include "bench/joints/cure.hpp"
#include "weather/laws/sealant_window.hpp"

using namespace snugwalk;

namespace {

constexpr double day = 86400.0;
constexpr double year = 365.2425 * day;

} // namespace

// common practice, no source
TEST_CASE("at 23 °C and 50 %: a skin in 10 to 60 min, rain after an hour at the least, through in 3 to 7 d")
{
    const auto t = cureTimes(millimetres(6), celsius(23), 50.0).value();
    CHECK(t.skin.low == doctest::Approx(600.0).epsilon(1e-6));
    CHECK(t.skin.high == doctest::Approx(3600.0).epsilon(1e-6));
    CHECK(t.rain.low >= 3600.0 * (1.0 - 1e-6));
    CHECK(t.full.low / day == doctest::Approx(3.0).epsilon(1e-6));
    CHECK(t.full.high / day == doctest::Approx(7.0).epsilon(1e-6));
    CHECK(t.full.basis == "common_practice");
}

TEST_CASE("cold or dry air cures slowly, and a deep bead slower by its square")
{
    const auto mild = cureTimes(millimetres(6), celsius(23), 50.0).value();
    CHECK(cureTimes(millimetres(6), celsius(6), 50.0)->full.value > mild.full.value * 2.0);
    CHECK(cureTimes(millimetres(6), celsius(5), 20.0)->full.warnings.front() == "slow_cure");
    CHECK(cureTimes(millimetres(12), celsius(23), 50.0)->full.value ==
          doctest::Approx(4.0 * mild.full.value));
    CHECK(cureTimes(millimetres(3), celsius(23), 50.0)->full.value == doctest::Approx(mild.full.value));
}

// common practice, no source
TEST_CASE("a self-leveling bead of a quarter inch lies about five years, by climate longer")
{
    const auto life = [](RoofClimate c) { return sealantLife(millimetres(6.35), c).value(); };
    SOURCED("CP", life(RoofClimate::Hot).value / year, 5.0, 1e-9);
    CHECK(life(RoofClimate::Hot).high / year == doctest::Approx(7.0));
    CHECK(life(RoofClimate::Mild).low / year == doctest::Approx(7.0));
    CHECK(life(RoofClimate::Mild).high / year == doctest::Approx(10.0));
    CHECK(life(RoofClimate::Hot).value < life(RoofClimate::Mixed).value);
    CHECK(life(RoofClimate::Mixed).value < life(RoofClimate::Mild).value);
    const auto thin = sealantLife(millimetres(3), RoofClimate::Hot).value();
    CHECK(thin.low / year == doctest::Approx(2.0));
    CHECK(thin.warnings.front() == "thin_bead");
    CHECK(life(RoofClimate::Hot).warnings.empty());
}

// Computed: dew point at 20 °C and 65 % is 13.2 °C; two sets of Magnus constants agree to 0.01 K there.
TEST_CASE("20 °C and 65 %: the dew point is 13.2 °C, so a roof of 16 °C is too damp and one of 17 is not")
{
    const auto window = sealantWindow(celsius(20), 65.0).value();
    SOURCED("computed", (window.dewPoint - celsius(0.0)).si(), 13.2, 0.05);
    const double g = 17.62 * 20.0 / (243.12 + 20.0) + std::log(0.65);
    CHECK(std::abs((window.dewPoint - celsius(243.12 * g / (17.62 - g))).si()) <= 0.01);
    CHECK(sealantWindow(celsius(20), 65.0, celsius(16))->tooDamp);
    CHECK_FALSE(sealantWindow(celsius(20), 65.0, celsius(17))->tooDamp);
}

TEST_CASE("what cannot be is refused, with its name")
{
    CHECK(cureTimes(Length(), celsius(20), 50.0).error().where == "depth");
    CHECK(cureTimes(millimetres(6), celsius(-5), 50.0).error().where == "temperature");
    CHECK(cureTimes(millimetres(6), celsius(20), 0.0).error().where == "humidity");
    CHECK(cureTimes(millimetres(6), celsius(20), std::nan("")).error().where == "humidity");
    CHECK(sealantLife(metres(1), RoofClimate::Hot).error().where == "height");
    CHECK_FALSE(parseRoofClimate("tropical"));
}
