// SPDX-License-Identifier: Apache-2.0
// Lines, traps and pump. Bores are from memory, fixtures and losses common practice, no source; the rest is
// geometry and one mixing rule.
#include "../sourced.hpp"

#include <algorithm>
#include <numbers>
#include <vector>

#include "base/units.hpp"
#include "bench/water/antifreeze.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

constexpr double inch = 0.0254;
constexpr double gallon = 231.0 * inch * inch * inch;
Volume gallons(double v) { return Volume::fromSi(v * gallon); }
Length feet(double v) { return metres(v * 12.0 * inch); }
Length bore(double nominal) { return pexBore(metres(nominal * inch)).value(); }
double gallonsAFoot(double nominal)
{
    const double d = bore(nominal).si();
    return std::numbers::pi / 4.0 * d * d * 12.0 * inch / gallon;
}

} // namespace

TEST_CASE("gallons a foot of 1/2, 3/8 and 3/4 in pipe: 0.0096, 0.0053, 0.0189")
{
    SOURCED("CP", gallonsAFoot(0.5), 0.0096, half(0.0001));
    SOURCED("CP", gallonsAFoot(0.375), 0.0053, half(0.0001));
    SOURCED("CP", gallonsAFoot(0.75), 0.0189, half(0.0001));
    CHECK_FALSE(pexBore(metres(inch)).has_value());
}

TEST_CASE("60 ft of 1/2 in, five traps, pump and toilet: 1.9 gal; with a 6 gal heater in the circuit 7.9")
{
    const std::vector<PipeRun> runs{{feet(60), bore(0.5)}};
    WaterSystem system{runs, 5};
    const Estimate e = antifreezeVolume(system).value();
    SOURCED("CP", e.value / 1.3 / gallon, 1.43, half(0.01));
    SOURCED("CP", e.value / gallon, 1.9, half(0.1));
    CHECK(e.high == doctest::Approx(1.2 * e.value));
    CHECK(e.warnings.empty());
    system.heater = gallons(6);
    const Estimate with = antifreezeVolume(system).value();
    SOURCED("CP", with.value / gallon, 7.9, half(0.1));
    CHECK(with.warnings == std::vector<std::string>{"heater_not_bypassed"});
}

TEST_CASE("mixing: c = c0 Va / (Va + Vw), and back")
{
    CHECK(strengthAfterMixing(1.0, gallons(2), gallons(0.5)).value().value == doctest::Approx(0.8));
    CHECK(strengthAfterMixing(0.5, gallons(3), gallons(1)).value().value == doctest::Approx(0.375));
    CHECK(addedForStrength(1.0, 0.8, gallons(0.5)).value().value == doctest::Approx(gallons(2).si()));
    CHECK(addedForStrength(0.5, 0.5, gallons(1)).error().where == "wanted");
    CHECK(strengthAfterMixing(1.2, gallons(1), gallons(1)).error().where == "strength");
    CHECK(strengthAfterMixing(1.0, gallons(0), gallons(1)).error().where == "added");
}

TEST_CASE("refusals name the input")
{
    const std::vector<PipeRun> wide{{feet(10), metres(0.1)}};
    const std::vector<PipeRun> runs{{feet(10), bore(0.5)}};
    CHECK(antifreezeVolume({wide}).error().where == "size");
    CHECK(antifreezeVolume({{}}).error().where == "pipe");
    CHECK(antifreezeVolume({runs, -1}).error().where == "traps");
    WaterSystem boiler{runs};
    boiler.heater = gallons(60);
    CHECK(antifreezeVolume(boiler).error().where == "heater");
}
