// SPDX-License-Identifier: Apache-2.0
// The grid against figures computed apart from this code (SciPy 1.10: dblquad over 8 standard deviations,
// and the same grids in numpy), and against worked figures of looks that miss.
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "due/life/life_posterior.hpp"

using namespace snugwalk;
using doctest::Approx;

namespace {

// log scale ~ N(ln 30, 0.6), log shape ~ N(ln 1.5, 0.35). Life 1 passed at 12, was found at 18 and
// renewed; life 2 passed at 6.
LifePosterior twoLives(const LifeCells &cells, double unit = 1.0)
{
    LifePosterior posterior(cells, 30.0 * unit);
    const LookAtAge pass{12.0 * unit, 1.0};
    posterior.add({{{&pass, 1}}, LookAtAge{18.0 * unit, 1.0}, 0.0});
    const LookAtAge now{6.0 * unit, 1.0};
    posterior.setNow({{&now, 1}});
    posterior.settle();
    return posterior;
}

double failsNext(const LifePosterior &posterior, double from, double ahead)
{
    return posterior.presentBy(from + ahead);
}

} // namespace

TEST_CASE("pass at 12, found at 18, renewed, pass at 6: three grids")
{
    struct Row {
        LifeGridSize size;
        double scale, shape, next6, next12;
    };
    for (const Row &row : {Row{{21, 15}, 28.29545092, 1.69933832, 0.2179949783, 0.4211484531},
                           Row{{61, 41}, 28.29543297, 1.69933029, 0.2179953624, 0.4211503090},
                           Row{{401, 301}, 28.29543093, 1.69932136, 0.2179955006, 0.4211499207}}) {
        CAPTURE(row.size.ages);
        const LifeCells cells({}, row.size);
        const LifePosterior posterior = twoLives(cells);
        CHECK(posterior.meanScale() == Approx(row.scale).epsilon(1e-9));
        CHECK(posterior.meanShape() == Approx(row.shape).epsilon(1e-8));
        CHECK(failsNext(posterior, 6.0, 6.0) == Approx(row.next6).epsilon(1e-9));
        CHECK(failsNext(posterior, 6.0, 12.0) == Approx(row.next12).epsilon(1e-9));
        // dblquad runs over 8 standard deviations, the grid over 4.5: what it leaves out moves the mean of
        // the shape most, by 2.4e-5 on the finest grid, the others by under 1e-5
        CHECK(std::abs(posterior.meanScale() / 28.29545498 - 1.0) < 1e-5);
        CHECK(std::abs(posterior.meanShape() - 1.69934548) < 2.5e-5);
        CHECK(std::abs(failsNext(posterior, 6.0, 6.0) - 0.2179951235) < 1e-5);
        CHECK(std::abs(failsNext(posterior, 6.0, 12.0) - 0.4211509314) < 1e-5);
        CHECK_FALSE(posterior.conflict());
    }
}

TEST_CASE("when the chance reaches 1 in 20, 1 in 10, 1 in 5")
{
    const LifeCells cells({});
    const LifePosterior posterior = twoLives(cells);
    CHECK(posterior.ageWhenPresent(0.05, 1000.0).value() - 6.0 == Approx(1.43277890).epsilon(1e-8));
    CHECK(posterior.ageWhenPresent(0.10, 1000.0).value() - 6.0 == Approx(2.80982969).epsilon(1e-8));
    CHECK(posterior.ageWhenPresent(0.20, 1000.0).value() - 6.0 == Approx(5.51073033).epsilon(1e-8));
    CHECK_FALSE(posterior.ageWhenPresent(0.20, 11.0));
}

TEST_CASE("prior only, after a pass, after a finding")
{
    const LifeCells cells({});
    LifePosterior posterior(cells, 30.0);
    CHECK(posterior.presentBy(12.0) == Approx(0.2765137490).epsilon(1e-9));
    CHECK(posterior.renewedFailsBy(12.0) == Approx(0.2765137490).epsilon(1e-9));
    const LookAtAge pass{12.0, 1.0};
    posterior.setNow({{&pass, 1}});
    posterior.settle();
    CHECK(failsNext(posterior, 12.0, 12.0) == Approx(0.3469589995).epsilon(1e-9)); // it ages
    LifePosterior found(cells, 30.0);
    found.add({{}, pass, 0.0}); // in (0, 12]
    found.settle();
    CHECK(found.renewedFailsBy(12.0) == Approx(0.4216292538).epsilon(1e-9));
}

TEST_CASE("another unit of time changes chances by rounding alone")
{
    const LifeCells cells({});
    const LifePosterior days = twoLives(cells, 30.44);
    CHECK(std::abs(failsNext(days, 6.0 * 30.44, 6.0 * 30.44) - 0.217995362408751) < 2e-15);
    CHECK(days.meanScale() == Approx(30.44 * 28.29543297).epsilon(1e-9));
}

TEST_CASE("looks that miss: one cell is one life, as worked in tst_imperfect_looks")
{
    // scale 30, shape 1.5; looks at 6, 12, 18 with q of 1, 0.9, 0.7; finding at 18 with and without alarms
    const LifeCells one({}, {1, 1});
    struct Row {
        double q, missed, by24;
    };
    for (const Row &row : {Row{1.0, 0.0, 0.221809364}, Row{0.9, 0.025264224, 0.241469747},
                           Row{0.7, 0.086090466, 0.288804158}}) {
        CAPTURE(row.q);
        const std::array passes = {LookAtAge{6, row.q}, LookAtAge{12, row.q}, LookAtAge{18, row.q}};
        LifePosterior posterior(one, 30.0);
        posterior.setNow({passes});
        posterior.settle();
        CHECK(std::abs(posterior.presentBy(18.0) - row.missed) < 1e-8);
        CHECK(std::abs(posterior.presentBy(24.0) - row.by24) < 1e-8);
        // where 1 - S / L = 0.3, by its own figure
        std::array<double, 1> age{};
        posterior.agesWhenPresent(0.3, age);
        CHECK(posterior.presentBy(age[0]) == Approx(0.3).epsilon(1e-12));
    }
}

TEST_CASE("the grid weighs each life as imperfect_looks does, birth and old looks too")
{
    const LifeCells cells({0.1, 0.6, 1.5, 0.35}, {9, 7});
    const std::vector<LookAtAge> passes = {{5, 0.7}, {9, 0.98}, {11, 0.85}, {17, 0.7}};
    for (const double q : {0.7, 1.0}) {
        CAPTURE(q);
        std::vector<LookAtAge> looks = passes;
        looks.back().sensitivity = q;
        LifePosterior posterior(cells, 20.0);
        posterior.add({{looks, 3.0}, LookAtAge{21, 0.85}});
        posterior.setNow({looks, 2.0});
        posterior.settle();
        std::vector<double> direct;
        double sum = 0.0;
        double present = 0.0;
        for (std::size_t cell = 0; cell < cells.size().cells(); ++cell) {
            const WeibullLife life = posterior.life(cell);
            direct.push_back(std::exp(cells.logWeights()[cell]) * likelihoodOfPasses(life, {looks, 2.0}) *
                             likelihoodOfFinding(life, {looks, 3.0}, {21, 0.85}));
            sum += direct.back();
            present += direct.back() * presentBy(life, {looks, 2.0}, 25.0);
        }
        for (std::size_t cell = 0; cell < direct.size(); ++cell)
            CHECK(posterior.weights()[cell] == Approx(direct[cell] / sum).epsilon(1e-10));
        CHECK(posterior.presentBy(25.0) == Approx(present / sum).epsilon(1e-10));
    }
}

TEST_CASE("anchored at a due threshold, the prior alone gives the interval as its median in every shape")
{
    // by construction: F(interval) = p along the middle of the grid; p of 0.01 to 0.25 are common practice
    for (const double p : {0.01, 0.03, 0.10, 0.25}) {
        const LifeCells cells({p, 0.6, 1.5, 0.35}, coarseGrid);
        const LifePosterior posterior(cells, 12.0);
        std::vector<double> ages(cells.size().cells());
        posterior.agesWhenPresent(p, ages);
        std::array<double, 3> quantiles{};
        std::vector<std::pair<double, double>> scratch;
        weightedQuantiles(ages, posterior.weights(), std::array{0.1, 0.5, 0.9}, quantiles, scratch);
        CHECK(quantiles[1] == Approx(12.0).epsilon(1e-9));
        CHECK(quantiles[0] < 12.0 * std::exp(-0.6));
        CHECK(quantiles[2] > 12.0 * std::exp(0.6));
    }
}

TEST_CASE("looks that contradict the prior are told")
{
    const LifeCells cells({});
    LifePosterior posterior(cells, 30.0);
    CHECK(posterior.medianDeviation() == Approx(0.0).epsilon(1e-9));
    const LookAtAge early{1.0, 1.0};
    for (int i = 0; i < 6; ++i)
        posterior.add({{}, early, 0.0}); // six in a row within a thirtieth of the usual life
    posterior.settle();
    CHECK(posterior.medianDeviation() < -2.0);
    CHECK(posterior.conflict());
    LifePosterior impossible(cells, 30.0);
    const LookAtAge always{1e60, 1.0};
    impossible.setNow({{&always, 1}});
    impossible.settle();
    CHECK(impossible.conflict());
    for (const double weight : impossible.weights())
        CHECK(std::isfinite(weight));
}

TEST_CASE("quantiles of weighted values")
{
    // twenty equal weights: on the line between middles, as type 5 of R's quantile
    std::vector<double> values;
    for (int i = 20; i > 0; --i)
        values.push_back(i);
    const std::vector<double> weights(20, 0.05);
    std::array<double, 4> out{};
    std::vector<std::pair<double, double>> scratch;
    weightedQuantiles(values, weights, std::array{0.01, 0.1, 0.5, 0.99}, out, scratch);
    CHECK(out[0] == 1.0);
    CHECK(out[1] == Approx(2.5));
    CHECK(out[2] == Approx(10.5));
    CHECK(out[3] == 20.0);
}
