// SPDX-License-Identifier: Apache-2.0
// Statics of a trailer on ball and axles; figures computed apart, and the trade's examples. Densities are
// common practice, no source.
#include "../sourced.hpp"

#include <algorithm>
#include <vector>

#include "base/units.hpp"
#include "bench/weights/load_shift.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

constexpr double pound = 0.45359237;
Mass pounds(double v) { return kilograms(v * pound); }
Length feet(double v) { return metres(v * 0.3048); }
bool warns(const Estimate &e, const char *slug)
{
    return std::find(e.warnings.begin(), e.warnings.end(), slug) != e.warnings.end();
}

} // namespace

TEST_CASE("computed apart: five loads, axles at 5.1 m: 2,910 kg, axles 2,498.2, tongue 411.8 or 14.150 %")
{
    const std::vector<Packed> items{{kilograms(2400), metres(4.6)},
                                    {kilograms(180), metres(3.0)},
                                    {kilograms(60), metres(0.6)},
                                    {kilograms(120), metres(7.5)},
                                    {kilograms(150), metres(1.5)}};
    const Forecast f = forecastWeights(items, metres(5.1), travelTrailerBand).value();
    CHECK(f.gross.value == doctest::Approx(2910.0).epsilon(1e-12));
    CHECK(f.axles.value * 5.1 == doctest::Approx(12741.0).epsilon(1e-12));
    SOURCED("computed", f.axles.value, 2498.235294, half(1e-6));
    SOURCED("computed", f.tongue.value, 411.764706, half(1e-6));
    SOURCED("computed", 100 * f.share.value, 14.149990, half(1e-6));
    CHECK(f.tongue.warnings == std::vector<std::string>{"forecast"});
}

TEST_CASE("computed apart: 100 kg from 7.5 m to 1.5 m add 117.647059 kg to the tongue")
{
    const Shifted s = shiftLoad({kilograms(100), metres(7.5), metres(1.5), metres(5.1)}).value();
    SOURCED("computed", s.tongueChange.value, 117.647059, half(1e-6));
    SOURCED("computed", s.axleChange.value, -117.647059, half(1e-6));
    CHECK(s.tongueChange.high - s.tongueChange.value == doctest::Approx(0.02 * 117.647059));
}

TEST_CASE("the trade's example: 150 lb on the bumper 12 ft behind the axles, 18 ft behind the ball")
{
    LoadShift put{pounds(150), std::nullopt, feet(30), feet(18), pounds(780), pounds(6920)};
    const Shifted s = shiftLoad(put).value();
    SOURCED("CP", s.tongueChange.value / pound, -100, half(1));
    SOURCED("CP", s.axleChange.value / pound, 250, half(1));
    SOURCED("CP", s.tongueAfter->value / pound, 680, half(1));
    SOURCED("CP", 100 * s.shareAfter->value, 9.6, half(0.1));
    CHECK(warns(s.tongueChange, "tongue_under_band"));
}

TEST_CASE("taking out is putting in backwards; a load at the axles moves no tongue; at the ball all of it")
{
    const LoadShift in{kilograms(80), std::nullopt, metres(7.0), metres(5.0)};
    const LoadShift out{kilograms(80), metres(7.0), std::nullopt, metres(5.0)};
    CHECK(shiftLoad(in).value().tongueChange.value ==
          doctest::Approx(-shiftLoad(out).value().tongueChange.value));
    CHECK(shiftLoad({kilograms(80), std::nullopt, metres(5), metres(5)}).value().tongueChange.value ==
          doctest::Approx(0.0));
    CHECK(shiftLoad({kilograms(80), std::nullopt, metres(0), metres(5)}).value().tongueChange.value ==
          doctest::Approx(80.0));
}

TEST_CASE("an empty trailer's own weighing goes in as tongue at the ball and axles at the axles")
{
    const std::vector<Packed> empty{{kilograms(210), metres(0)}, {kilograms(1640), metres(4.4)}};
    const Forecast f = forecastWeights(empty, metres(4.4), travelTrailerBand).value();
    CHECK(f.tongue.value == doctest::Approx(210.0));
    CHECK(f.axles.value == doctest::Approx(1640.0));
    const std::vector<Packed> tail{{kilograms(100), metres(9)}};
    CHECK(forecastWeights(tail, metres(4.4), travelTrailerBand).error().where == "items");
}

TEST_CASE("liquids: 45 gal of fresh water are 375 lb, and 1.00 kg a liter; gas 4.2, gasoline 6.1, diesel 7.1")
{
    const Volume gallon = Volume::fromSi(231.0 * 0.0254 * 0.0254 * 0.0254);
    SOURCED("CP", liquidMass(Liquid::Water, gallon * 45).value().value / pound, 375, half(1));
    SOURCED("CP", liquidMass(Liquid::Water, Volume::fromSi(0.001)).value().value, 1.00, half(0.01));
    SOURCED("CP", liquidMass(Liquid::Propane, gallon).value().value / pound, 4.2, half(0.1));
    SOURCED("CP", liquidMass(Liquid::Gasoline, gallon).value().value / pound, 6.1, half(0.1));
    SOURCED("CP", liquidMass(Liquid::Diesel, gallon).value().value / pound, 7.1, half(0.1));
    CHECK(liquidMass(Liquid::Water, gallon * -1).error().where == "volume");
}

TEST_CASE("refusals name the input")
{
    CHECK(shiftLoad({kilograms(10), std::nullopt, std::nullopt, metres(5)}).error().where == "to");
    CHECK(shiftLoad({kilograms(10), metres(1), metres(90), metres(5)}).error().where == "to");
    CHECK(shiftLoad({kilograms(10), metres(1), metres(2), metres(0)}).error().where == "axle");
    CHECK(shiftLoad({kilograms(10), metres(1), metres(2), metres(5), kilograms(900), kilograms(800)})
              .error()
              .where == "tongue");
}
