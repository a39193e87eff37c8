// SPDX-License-Identifier: Apache-2.0
// Looks that miss: worked figures, and laws that hold for any sensitivity.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <vector>

#include "due/imperfect_looks.hpp"
#include "due/life_prior.hpp"

using namespace snugwalk;

namespace {

constexpr WeibullLife life{30.0, 1.5};

std::vector<LookAtAge> looks(std::vector<double> ages, double sensitivity)
{
    std::vector<LookAtAge> out;
    for (const double age : ages)
        out.push_back({age, sensitivity});
    return out;
}

// The definition, written out: every gap times the chance that all looks after it missed it.
double byDefinition(const std::vector<LookAtAge> &passes)
{
    double all = life.survival(passes.back().age);
    double before = 0.0;
    for (std::size_t j = 0; j < passes.size(); ++j) {
        double missed = 1.0;
        for (std::size_t i = j; i < passes.size(); ++i)
            missed *= 1.0 - passes[i].sensitivity;
        all += (life.survival(before) - life.survival(passes[j].age)) * missed;
        before = passes[j].age;
    }
    return all;
}

} // namespace

TEST_CASE("three passes at 6, 12, 18 of a life with scale 30 and shape 1.5")
{
    // Worked by the formula in double precision, and again in Python for this test
    struct Row {
        double q, missed, by24;
    };
    for (const Row &row : {Row{1.0, 0.0, 0.221809364}, Row{0.9, 0.025264224, 0.241469747},
                           Row{0.7, 0.086090466, 0.288804158}}) {
        CAPTURE(row.q);
        const auto passes = looks({6, 12, 18}, row.q);
        CHECK(std::abs(missedSoFar(life, {passes}) - row.missed) < 1e-8);
        CHECK(std::abs(presentBy(life, {passes}, 24.0) - row.by24) < 1e-8);
    }
}

TEST_CASE("attention at 18 after passes at 6 and 12, without and with false alarms")
{
    // Worked in the same way; alpha 0.02
    const auto passes = looks({6, 12}, 0.9);
    CHECK(std::abs(likelihoodOfFinding(life, {passes}, {18.0, 0.9}, 0.0) - 0.146561445) < 1e-8);
    CHECK(std::abs(likelihoodOfFinding(life, {passes}, {18.0, 0.9}) - 0.159127188) < 1e-8);
    CHECK(falseAlarm == 0.02);
}

TEST_CASE("perfect looks: only the last pass counts")
{
    // Survival analysis: S(a) for a pass at a, S(a) - S(b) for a finding between
    const auto many = looks({2, 5, 12}, 1.0);
    const auto one = looks({12}, 1.0);
    CHECK(likelihoodOfPasses(life, {many}) == doctest::Approx(life.survival(12.0)).epsilon(1e-14));
    CHECK(presentBy(life, {many}, 20.0) == doctest::Approx(presentBy(life, {one}, 20.0)).epsilon(1e-14));
    CHECK(likelihoodOfFinding(life, {one}, {18.0, 1.0}, 0.0) ==
          doctest::Approx(life.survival(12.0) - life.survival(18.0)).epsilon(1e-12));
}

TEST_CASE("looks of different sensitivity, against the definition written out")
{
    const std::vector<LookAtAge> mixed = {{3, 0.7}, {7, 0.98}, {8, 0.85}, {15, 0.7}};
    CHECK(likelihoodOfPasses(life, {mixed}) == doctest::Approx(byDefinition(mixed)).epsilon(1e-13));
}

TEST_CASE("Kijima's virtual age: a life known to work at age 9")
{
    // scale 30, shape 1.5, age 9: P(fails in the next 6) = 0.172409344, [KIJIMA-1989]; worked apart
    CHECK(std::abs(presentBy(life, {{}, 9.0}, 15.0) - 0.172409344) < 1e-8);
    CHECK(std::abs(presentBy(life, {{}, 0.0}, 6.0) - 0.085559356) < 1e-8);
    CHECK(std::abs(presentBy(life, {{}, 18.0}, 24.0) - 0.221809364) < 1e-8);
    // far beyond its scale: no 0/0, hazards count from the age it was born at
    CHECK(presentBy(WeibullLife{1.0, 3.0}, {{}, 200.0}, 200.00001) ==
          doctest::Approx(-std::expm1(-(std::pow(200.00001, 3) - 8e6))).epsilon(1e-6));
}

TEST_CASE("old looks are left out, and nobody sees the difference")
{
    std::vector<LookAtAge> passes;
    for (int month = 1; month <= 240; ++month)
        passes.push_back({static_cast<double>(month), month % 3 == 0 ? 0.7 : 0.85});
    const auto kept = looksThatMatter(passes);
    CHECK(kept.size() < 20);
    const WeibullLife slow{200.0, 1.5};
    CHECK(presentBy(slow, {kept}, 250.0) == doctest::Approx(presentBy(slow, {passes}, 250.0)).epsilon(1e-7));
    CHECK(likelihoodOfPasses(slow, {kept}) ==
          doctest::Approx(likelihoodOfPasses(slow, {passes})).epsilon(1e-7));
}

TEST_CASE("Gauss-Hermite nodes give the moments of a standard normal")
{
    // Moments 1, 1, 3, 15, 105, 945, 10395 of even orders 0 to 12; odd ones are 0
    const std::array<double, 7> moments = {1, 1, 3, 15, 105, 945, 10395};
    for (int order = 0; order <= 13; ++order) {
        double seven = 0.0;
        double three = 0.0;
        for (const NormalNode &node : sevenNodes())
            seven += node.weight * std::pow(node.z, order);
        for (const NormalNode &node : threeNodes())
            three += node.weight * std::pow(node.z, order);
        const double moment = order % 2 == 1 ? 0.0 : moments[static_cast<std::size_t>(order / 2)];
        CAPTURE(order);
        CHECK(seven == doctest::Approx(moment).epsilon(1e-10));
        if (order <= 5)
            CHECK(three == doctest::Approx(moment).epsilon(1e-10));
    }
}

TEST_CASE("over all lives of the prior, the share set for the severity has failed at the interval")
{
    // p* 0.01, 0.03, 0.10, 0.25 for severity I to IV: common practice, declared
    const std::array shares = {0.01, 0.03, 0.10, 0.25};
    for (int s = 0; s < 4; ++s) {
        for (const Failing failing : {Failing::Wear, Failing::Chance, Failing::Fatigue}) {
            for (const double nominal : {0.1, 1.0, 12.0, 60.0}) {
                double failed = 0.0;
                double weights = 0.0;
                for (const LifeCell &cell : priorGrid(nominal, static_cast<Severity>(s), failing)) {
                    failed += cell.weight * (1.0 - cell.life.survival(nominal));
                    weights += cell.weight;
                }
                CHECK(weights == doctest::Approx(1.0).epsilon(1e-12));
                CHECK(failed == doctest::Approx(shares[static_cast<std::size_t>(s)]).epsilon(1e-9));
            }
        }
    }
}

TEST_CASE("the small grid stays near a fine one of 601 by 101 lives")
{
    // The same prior cut finely (midpoints over 5 standard deviations), its own computation
    const double nominal = 12.0;
    const LifeGrid grid = priorGrid(nominal, Severity::II, Failing::Wear);
    double low = 1e9;
    for (const LifeCell &cell : grid) // the middle of the middle shape
        low = std::abs(cell.life.shape - 1.5) < 1e-9 ? std::min(low, cell.life.scale) : low;
    const double middle = low * std::exp(0.6 * 3.750439717725742);
    const double hazard = std::pow(nominal / middle, 1.5);
    double fine = 0.0;
    double weights = 0.0;
    for (int i = 0; i < 601; ++i) {
        for (int j = 0; j < 101; ++j) {
            const double z = -5.0 + 10.0 * (i + 0.5) / 601.0;
            const double y = -5.0 + 10.0 * (j + 0.5) / 101.0;
            const double shape = std::exp(std::log(1.5) + 0.35 * y);
            const double scale = nominal / std::pow(hazard, 1.0 / shape) * std::exp(0.6 * z);
            const double w = std::exp(-(z * z + y * y) / 2.0);
            fine += w * (1.0 - WeibullLife{scale, shape}.survival(nominal));
            weights += w;
        }
    }
    MESSAGE("21 lives give 0.03, fine grid gives ", fine / weights);
    CHECK(fine / weights == doctest::Approx(0.03).epsilon(0.1));
}
