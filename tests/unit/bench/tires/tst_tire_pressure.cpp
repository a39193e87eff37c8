// SPDX-License-Identifier: Apache-2.0
// What to set, what a reading says, and what is refused.
#include <doctest/doctest.h>

#include <algorithm>
#include <limits>

#include "base/units.hpp"
#include "bench/standard_air.hpp"
#include "bench/tires/tire_pressure.hpp"

using namespace snugwalk;

namespace {

TireSetting shed(std::optional<Pressure> maximum)
{
    return {psi(65), maximum, {celsius(20), {}}, {celsius(-10), {}}};
}

bool warns(const Estimate &e, const char *slug)
{
    return std::find(e.warnings.begin(), e.warnings.end(), slug) != e.warnings.end();
}

} // namespace

TEST_CASE("65 psi wanted at -10 degC, set in a shed at 20")
{
    // Gas law: (65 + 14.696) * 293.15 / 263.15 - 14.696 = 74.09 psi
    const Estimate e = pressureToSet(shed(psi(80))).value();
    CHECK(e.value / pascalsPerPsi == doctest::Approx(74.0856).epsilon(1e-5));
    CHECK(e.unit == "Pa");
    CHECK(e.basis == "computed");
    CHECK(e.low < e.value);
    CHECK(e.high > e.value);
    CHECK(e.warnings.empty());
}

TEST_CASE("the maximum is never passed: set it outside")
{
    const Estimate e = pressureToSet(shed(psi(70))).value();
    CHECK(e.value / pascalsPerPsi == doctest::Approx(70.0));
    CHECK(e.high / pascalsPerPsi == doctest::Approx(70.0));
    CHECK(warns(e, "set_outside"));
}

TEST_CASE("without a maximum the answer says that it is not known")
{
    CHECK(warns(pressureToSet(shed(std::nullopt)).value(), "maximum_unknown"));
}

TEST_CASE("warmer ahead: the placard stays, a correction never lowers it")
{
    const Estimate e = pressureToSet({psi(65), psi(80), {celsius(5), {}}, {celsius(30), {}}}).value();
    CHECK(e.value / pascalsPerPsi == doctest::Approx(65.0));
    CHECK(e.low / pascalsPerPsi == doctest::Approx(65.0));
    CHECK(e.basis == "maker");
}

TEST_CASE("a start lower down than here needs more now")
{
    const TireSetting fromPass{psi(65), psi(90), {celsius(10), metres(2000)}, {celsius(10), metres(0)}};
    const Estimate e = pressureToSet(fromPass).value();
    CHECK(e.value > psi(65).si());
}

TEST_CASE("a placard over the tire's maximum is refused")
{
    CHECK(pressureToSet(shed(psi(60))).error().where == "maximum");
}

TEST_CASE("refuses what it cannot know, naming the input")
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const double p : {0.0, -1.0, 1.1e6, nan})
        CHECK(pressureElsewhere(Pressure::fromSi(p), {}, {}).error().where == "pressure");
    for (const double t : {-41.0, 91.0, nan}) {
        CHECK(pressureElsewhere(psi(65), {celsius(t), {}}, {}).error().where == "temperature from");
        CHECK(pressureElsewhere(psi(65), {}, {celsius(t), {}}).error().where == "temperature to");
    }
    for (const double h : {-501.0, 11001.0, nan})
        CHECK(pressureElsewhere(psi(65), {}, {celsius(20), metres(h)}).error().where == "altitude");
}

TEST_CASE("a warm start widens the answer by 2 psi either way")
{
    const Estimate warm = pressureEstimate(psi(70), {celsius(35), {}}, {celsius(10), {}}, true).value();
    CHECK((warm.high - warm.low) / pascalsPerPsi == doctest::Approx(4.0));
    CHECK(warns(warm, "warm_start"));
    const Estimate cold = pressureEstimate(psi(70), {celsius(35), {}}, {celsius(10), {}}, false).value();
    CHECK(cold.high == cold.low);
    CHECK(cold.value == warm.value);
}

TEST_CASE("a warm reading is never a pass, only not low")
{
    CHECK(judge(psi(70), true, psi(65), psi(80)) == PressureCall::NotLow);
    CHECK(judge(psi(85), true, psi(65), psi(80)) == PressureCall::NotLow); // hot, and nothing is let out
    CHECK(judge(psi(64), true, psi(65), psi(80)) == PressureCall::Low);
    CHECK(judge(psi(65), false, psi(65), psi(80)) == PressureCall::AtLeastPlacard);
    CHECK(judge(psi(64.9), false, psi(65), psi(80)) == PressureCall::Low);
    CHECK(judge(psi(81), false, psi(65), psi(80)) == PressureCall::OverMaximum);
    CHECK(judge(psi(81), false, psi(65), std::nullopt) == PressureCall::AtLeastPlacard);
    CHECK(judge(Pressure::fromSi(std::numeric_limits<double>::quiet_NaN()), false, psi(65), psi(80)) ==
          PressureCall::Low);
}
