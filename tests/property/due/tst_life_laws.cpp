// SPDX-License-Identifier: Apache-2.0
// Laws of the grid that hold for any looks: longer passes, nothing seen, units, weights, seeded cases.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <random>

#include "due/life/life_posterior.hpp"

using namespace snugwalk;
using doctest::Approx;

namespace {

const LifeCells &cells()
{
    static const LifeCells all({});
    return all;
}

double renewedAfterPass(double age, double horizon)
{
    const LookAtAge pass{age, 1.0};
    LifePosterior posterior(cells(), 30.0);
    posterior.add({{{&pass, 1}}, {}, 0.0});
    posterior.settle();
    return posterior.renewedFailsBy(horizon);
}

double renewedAfterFinding(double from, double until, double horizon)
{
    const LookAtAge pass{from, 1.0};
    LifePosterior posterior(cells(), 30.0);
    SeenLife life{{}, LookAtAge{until, 1.0}, 0.0};
    if (from > 0.0)
        life.looks.passes = {&pass, 1};
    posterior.add(life);
    posterior.settle();
    return posterior.renewedFailsBy(horizon);
}

// Rising ages with looks of mixed sensitivity.
std::vector<LookAtAge> someLooks(std::mt19937 &random)
{
    std::uniform_real_distribution<double> gap(0.2, 9.0);
    std::vector<LookAtAge> looks;
    double age = 0.0;
    const auto n = 1 + random() % 6;
    for (auto i = n; i > 0; --i) {
        age += gap(random);
        looks.push_back({age, std::array{0.7, 0.85, 0.98, 1.0}[random() % 4]});
    }
    return looks;
}

} // namespace

TEST_CASE("the longer a life passed, the less a renewed one is expected to fail")
{
    double before = renewedAfterPass(0.0, 12.0);
    for (int age = 1; age <= 60; ++age) {
        const double now = renewedAfterPass(age, 12.0);
        CAPTURE(age);
        CHECK(now < before);
        before = now;
    }
}

TEST_CASE("an earlier finding makes failures within the usual life likelier")
{
    // For horizons up to the prior's median; far beyond it a very early finding also lowers the shape, and
    // the law does not hold (0.696 after (0, 3], 0.708 after (3, 6], by 24)
    for (const double horizon : {3.0, 6.0, 12.0}) {
        double before = renewedAfterFinding(0.0, 3.0, horizon);
        for (int i = 1; i < 20; ++i) {
            const double now = renewedAfterFinding(3.0 * i, 3.0 * i + 3.0, horizon);
            CAPTURE(horizon);
            CAPTURE(i);
            CHECK(now < before);
            before = now;
        }
    }
    CHECK(renewedAfterFinding(0.0, 3.0, 24.0) == Approx(0.696233).epsilon(1e-6));
    CHECK(renewedAfterFinding(3.0, 6.0, 24.0) == Approx(0.708345).epsilon(1e-6));
}

TEST_CASE("a pass at age 0 tells nothing")
{
    LifePosterior posterior(cells(), 30.0);
    const std::vector<double> prior(posterior.weights().begin(), posterior.weights().end());
    const LookAtAge atOnce{0.0, 1.0};
    posterior.setNow({{&atOnce, 1}});
    posterior.settle();
    for (std::size_t cell = 0; cell < prior.size(); ++cell)
        CHECK(posterior.weights()[cell] == prior[cell]);
}

TEST_CASE("200 seeded lives: units change nothing, chances rise with age, dates answer chances")
{
    std::mt19937 random(7);
    const LifeCells coarse({}, coarseGrid);
    for (int round = 0; round < 200; ++round) {
        CAPTURE(round);
        const std::vector<LookAtAge> earlier = someLooks(random);
        const std::vector<LookAtAge> now = someLooks(random);
        const auto posteriorIn = [&](double unit) {
            auto scaled = [&](std::vector<LookAtAge> looks) {
                for (LookAtAge &look : looks)
                    look.age *= unit;
                return looks;
            };
            const auto before = scaled(earlier);
            const auto passes = scaled(now);
            LifePosterior posterior(coarse, 20.0 * unit);
            posterior.add({{before}, LookAtAge{before.back().age + 2.0 * unit, 0.85}});
            posterior.setNow({passes});
            posterior.settle();
            return posterior;
        };
        const LifePosterior months = posteriorIn(1.0);
        const LifePosterior days = posteriorIn(30.4375);
        double sum = 0.0;
        for (std::size_t cell = 0; cell < months.weights().size(); ++cell) {
            CHECK(days.weights()[cell] == Approx(months.weights()[cell]).epsilon(1e-9));
            sum += months.weights()[cell];
        }
        CHECK(sum == Approx(1.0).epsilon(1e-12));
        const double last = now.back().age;
        double before = months.presentBy(last);
        CHECK(before >= 0.0);
        for (double ahead = 1.0; ahead < 100.0; ahead *= 2.0) {
            const double chance = months.presentBy(last + ahead);
            CHECK(chance > before);
            CHECK(chance <= 1.0);
            before = chance;
        }
        for (const double p : {0.05, 0.3, 0.8}) {
            const double age = months.ageWhenPresent(p, 1e6).value();
            CHECK((age == last || months.presentBy(age) == Approx(p).epsilon(1e-9)));
        }
    }
}

TEST_CASE("a life that counts half moves chances less far than one that counts whole")
{
    const LookAtAge early{4.0, 1.0};
    const auto after = [&](double weight) {
        LifePosterior posterior(cells(), 30.0);
        posterior.add({{}, early, 0.0}, weight);
        posterior.settle();
        return posterior.renewedFailsBy(12.0);
    };
    CHECK(after(0.0) < after(0.5));
    CHECK(after(0.5) < after(1.0));
}
