// SPDX-License-Identifier: Apache-2.0
// Laws of the likelihood fit over seeded samples of known laws: order, weights, covariates, the maximum.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "due/life/weibull_fit.hpp"
#include "due/life/weibull_terms.hpp"

using namespace snugwalk;
using doctest::Approx;

namespace {

// Lives of shape 1.8 and scale 40 exp(0.5 x), looked at every 8, some lost from sight.
CensoredLives sample(std::mt19937 &random, std::size_t n)
{
    std::uniform_real_distribution<double> even(0.0, 1.0);
    CensoredLives data;
    data.names = {"x"};
    for (std::size_t i = 0; i < n; ++i) {
        const double x = 2.0 * even(random) - 1.0;
        const double age = 40.0 * std::exp(0.5 * x) * std::pow(-std::log1p(-even(random)), 1.0 / 1.8);
        const double end = 8.0 * std::ceil(1.0 + 9.0 * even(random));
        const double passed = 8.0 * std::floor(std::min(age, end) / 8.0);
        data.lives.push_back({passed, age < end ? passed + 8.0 : HUGE_VAL});
        data.covariates.push_back(x);
    }
    return data;
}

double logLikelihoodAt(const CensoredLives &data, double logScale, double coefficient, double logShape)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < data.lives.size(); ++i) {
        const double location = logScale + coefficient * data.covariates[i];
        sum += lifeTerm(logAgesOf(data.lives[i]), location, -logShape).value;
    }
    return sum;
}

} // namespace

TEST_CASE("50 samples of 60: no neighbour is likelier, order and weights change nothing")
{
    std::mt19937 random(11);
    for (int round = 0; round < 50; ++round) {
        CAPTURE(round);
        CensoredLives data = sample(random, 60);
        const WeibullFit fit = fitWeibull(data).value();
        const double c = fit.coefficients[0];
        CHECK(logLikelihoodAt(data, fit.logScale, c, fit.logShape) ==
              Approx(fit.logLikelihood).epsilon(1e-12));
        for (const double off : {-1e-3, 1e-3}) {
            CHECK(logLikelihoodAt(data, fit.logScale + off, c, fit.logShape) < fit.logLikelihood);
            CHECK(logLikelihoodAt(data, fit.logScale, c + off, fit.logShape) < fit.logLikelihood);
            CHECK(logLikelihoodAt(data, fit.logScale, c, fit.logShape + off) < fit.logLikelihood);
        }
        CensoredLives twice = data;
        std::reverse(twice.lives.begin(), twice.lives.end());
        std::reverse(twice.covariates.begin(), twice.covariates.end());
        for (CensoredLife &life : twice.lives)
            life.weight = 2.0;
        const WeibullFit heavy = fitWeibull(twice).value();
        CHECK(heavy.logScale == Approx(fit.logScale).epsilon(1e-9));
        CHECK(heavy.coefficients[0] == Approx(c).epsilon(1e-7));
        CHECK(heavy.logScaleError() == Approx(fit.logScaleError() / std::sqrt(2.0)).epsilon(1e-7));
        for (double &x : data.covariates)
            x = 10.0 - 2.0 * x; // another zero and unit of the covariate
        const WeibullFit moved = fitWeibull(data).value();
        CHECK(moved.coefficients[0] == Approx(-c / 2.0).epsilon(1e-6));
        CHECK(moved.logScale == Approx(fit.logScale + 5.0 * c).epsilon(1e-6));
        CHECK(moved.logShape == Approx(fit.logShape).epsilon(1e-6));
    }
}

TEST_CASE("a large sample finds the law it was drawn from, within its standard errors")
{
    std::mt19937 random(3);
    const WeibullFit fit = fitWeibull(sample(random, 20'000)).value();
    CHECK(std::abs(fit.logScale - std::log(40.0)) < 4.0 * fit.logScaleError());
    CHECK(std::abs(fit.logShape - std::log(1.8)) < 4.0 * fit.logShapeError());
    CHECK(std::abs(fit.coefficients[0] - 0.5) < 4.0 * fit.coefficientError(0));
    CHECK(fit.logScaleError() < 0.01);
}
