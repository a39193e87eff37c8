// SPDX-License-Identifier: Apache-2.0
// Torque and clamp. [SHIGLEY] Mechanical Engineering Design, example 8-3 and table 8-15; [ASME-B1.1] and
// [ISO-898-1] print stress areas; [SAE-J429] proof strengths.
#include "../sourced.hpp"

#include <array>
#include <cmath>
#include <numeric>

#include "base/units.hpp"
#include "bench/wheels/clamp_force.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

constexpr double poundForce = 0.45359237 * 9.80665;
constexpr double poundFoot = poundForce * 0.3048;
constexpr double squareInch = 0.0254 * 0.0254;
Stud stud(const char *thread) { return parseStud(thread).value(); }
// Pull on the thread in ksi.
double stress(const char *thread, const Estimate &force)
{
    return force.value / poundForce / (stressArea(stud(thread)).si() / squareInch) / 1000.0;
}
Estimate clamp(const char *thread, double newtonMetres, double friction)
{
    return clampForce(stud(thread), Torque::fromSi(newtonMetres), friction).value();
}

} // namespace

TEST_CASE("example 8-3: 3/4-16 at 25 kip takes 3,750 lbf·in = 312.5 lbf·ft; 25 kip on 0.373 in² is 67.02 ksi")
{
    const Torque torque = torqueFor(stud("3/4-16"), Force::fromSi(25e3 * poundForce), 0.20);
    SOURCED("SHIGLEY", torque.si() / poundFoot, 312.5, 1e-9);
    // the example divides by its printed 0.373 in²; the formula's 0.37296 gives 67.03
    SOURCED("SHIGLEY", 25.0 / (stressArea(stud("3/4-16")).si() / squareInch), 67.02, 0.0125);
    SOURCED("computed", 25.0 / (stressArea(stud("3/4-16")).si() / squareInch), 67.03, half(0.01));
}

// The printed 0.1599 in² of 1/2-20 is worked from rounded diameters; the formula gives 0.159953.
TEST_CASE("stress areas as printed")
{
    const struct {
        const char *source;
        const char *thread;
        double area, unit, halfDigit;
    } rows[] = {
        {"ASME-B1.1", "7/16-20", 0.1187, squareInch, 5e-5},
        {"ASME-B1.1", "1/2-20", 0.1599, squareInch, 6e-5},
        {"ASME-B1.1", "9/16-18", 0.203, squareInch, 5e-4},
        {"ASME-B1.1", "5/8-18", 0.256, squareInch, 5e-4},
        {"ASME-B1.1", "3/4-16", 0.373, squareInch, 5e-4},
        {"ISO-898-1", "M12x1.75", 84.3, 1e-6, 0.05},
        {"ISO-898-1", "M14x2", 115, 1e-6, 0.5},
        {"ISO-898-1", "M14x1.5", 125, 1e-6, 0.5},
        {"ISO-898-1", "M12x1.5", 88.1, 1e-6, 0.05},
    };
    for (const auto &row : rows) {
        CAPTURE(row.thread);
        SOURCED(row.source, stressArea(stud(row.thread)).si() / row.unit, row.area, row.halfDigit);
    }
}

TEST_CASE("1/2-20 at 100 lb·ft and K 0.20: 12,000 lbf, 75 ksi, 62.54 % of grade 8 and 88 % of grade 5")
{
    const Estimate force = clamp("1/2-20", 100.0 * poundFoot, 0.20);
    SOURCED("CP", force.value / poundForce, 12'000, 1e-6);
    SOURCED("CP", stress("1/2-20", force), 75, half(1));
    // 0.6254 by the printed area of 0.1599 in², 0.6252 by the formula's 0.159953
    const double share8 = shareOfProof(stud("1/2-20"), force, *proofStrength("8")).value;
    SOURCED("SAE-J429", share8 * stressArea(stud("1/2-20")).si() / squareInch / 0.1599, 0.6254, half(1e-4));
    SOURCED("computed", share8, 0.6252, half(1e-4));
    SOURCED("SAE-J429", shareOfProof(stud("1/2-20"), force, *proofStrength("5")).value, 0.88, 5e-3);
    // Oiled at K 0.15 (common practice): 16,000 lbf, 100 ksi, past the proof of grade 5
    const Estimate oiled = clamp("1/2-20", 100.0 * poundFoot, 0.15);
    SOURCED("CP", oiled.value / poundForce, 16'000, 1e-6);
    SOURCED("CP", stress("1/2-20", oiled), 100, half(1));
    CHECK(oiled.warnings == std::vector<std::string>{"lubricated_studs"});
    const Estimate share = shareOfProof(stud("1/2-20"), oiled, *proofStrength("5"));
    CHECK(share.value > 1.0);
    CHECK(share.warnings == std::vector<std::string>{"near_proof"});
}

TEST_CASE("M14 at 140 N·m: 62.5, 50.0 and 33.333 kN at K 0.16, 0.20 and 0.30, 30 % either way")
{
    SOURCED("computed", clamp("M14", 140, 0.16).value, 62'500, 1e-6);
    SOURCED("computed", clamp("M14", 140, 0.20).value, 50'000, 1e-6);
    SOURCED("computed", clamp("M14", 140, 0.30).value, 33'333.333333, 1e-5);
    const Estimate force = clamp("M14", 140, 0.20);
    SOURCED("VDI-2230", force.high / force.value, 1.30, 1e-12);
    CHECK(force.low == doctest::Approx(0.70 * force.value));
}

TEST_CASE("the same torque clamps 1.11 times as hard oiled, 1.67 times with anti-seize")
{
    SOURCED("SHIGLEY", clamp("M14", 140, 0.18).value / clamp("M14", 140, 0.20).value, 1.11, 0.005);
    SOURCED("SHIGLEY", clamp("M14", 140, 0.12).value / clamp("M14", 140, 0.20).value, 1.67, 0.005);
}

TEST_CASE("ten lubricated tests at 90 N·m, as printed with mean 34.18 kN, all lie in our band about it")
{
    const std::array<double, 10> kilonewtons = {30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5};
    const Estimate ours = clamp("M14", 90, 0.18);
    for (const double f : kilonewtons) {
        CAPTURE(f);
        SOURCED("SHIGLEY", f / 34.18, 1.0, ours.high / ours.value - 1.0);
    }
    const double mean = std::accumulate(kilonewtons.begin(), kilonewtons.end(), 0.0) / 10.0;
    double squares = 0.0;
    for (const double f : kilonewtons)
        squares += (f - mean) * (f - mean);
    const double sd = std::sqrt(squares / 9.0);
    SOURCED("SHIGLEY", mean, 34.18, half(0.01));
    SOURCED("SHIGLEY", sd, 2.88, half(0.01));
    SOURCED("computed", sd, 2.881281, half(1e-6));
    SOURCED("computed", sd / mean, 0.0843, half(1e-4));
    // with 4 % of the tool, two standard deviations: 18.7 % at best, and 30 % is what we show
    SOURCED("computed", 2.0 * std::hypot(0.04, sd / mean), 0.187, half(0.001));
    CHECK(ours.high / ours.value - 1.0 > 2.0 * std::hypot(0.04, sd / mean));
}

// Common practice, no source, but M22: US Army manuals of trucks with hub-piloted wheels. To catch a slip
// only; of 5/8-18 the trade has 175 to 225 for cone nuts and 275 to 325 for flange nuts, told as one range.
TEST_CASE("what studs commonly get, in lb·ft and N·m")
{
    const struct {
        const char *thread;
        double low, high, metricLow, metricHigh;
    } rows[] = {{"7/16-20", 55, 75, 75, 102},   {"M12x1.5", 70, 90, 95, 122},
                {"1/2-20", 90, 120, 122, 163},  {"9/16-18", 120, 140, 163, 190},
                {"5/8-18", 175, 325, 237, 441}, {"M22x1.5", 450, 500, 610, 678},
                {"M14x1.5", 100, 140, 136, 190}};
    for (const auto &row : rows) {
        CAPTURE(row.thread);
        const Stud found = stud(row.thread);
        REQUIRE((found.commonLow && found.commonHigh));
        SOURCED("CP", found.commonLow->si() / poundFoot, row.low, half(1));
        SOURCED("CP", found.commonHigh->si() / poundFoot, row.high, half(1));
        SOURCED("computed", found.commonLow->si(), row.metricLow, half(1));
        SOURCED("computed", found.commonHigh->si(), row.metricHigh, half(1));
    }
    CHECK_FALSE(stud("M16x1.5").commonLow);
}

TEST_CASE("what cannot be is refused, with its name")
{
    for (const char *bad :
         {"", "M", "14", "1/2", "M14x", "x14", "M14x1x1", "1/0-20", "1/2-0", "M99", "M14x9"}) {
        CAPTURE(bad);
        CHECK(parseStud(bad).error().where == "stud");
    }
    CHECK(clampForce(stud("M14"), Torque::fromSi(50), 0.2).error().where == "torque"); // 37 lb·ft
    CHECK(clampForce(stud("M14"), Torque::fromSi(760), 0.2).error().where == "torque");
    CHECK(clampForce(stud("M14"), Torque::fromSi(140), 0.01).error().where == "friction");
    CHECK(clampForce(stud("M14"), Torque::fromSi(140), std::nan("")).error().where == "friction");
}
