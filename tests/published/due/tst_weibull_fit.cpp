// SPDX-License-Identifier: Apache-2.0
// Maximum likelihood of interval-censored lives: published inspection data, figures of R's survreg
// (survival 3.5), closed forms. Theory as in [MEEKER-ESCOBAR-1998].
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "due/life/weibull_fit.hpp"
#include "due/life/weibull_terms.hpp"

using namespace snugwalk;
using doctest::Approx;

namespace {

constexpr double forever = HUGE_VAL;

// W. Nelson, Applied Life Data Analysis, 1982, p. 415: cracks of 167 turbine parts, looked at eight
// times, ages in months; as printed in the documentation of SAS/QC (the book from memory).
const std::vector<CensoredLife> cracks = {
    {0, 6.12, 5},      {6.12, 19.92, 16}, {19.92, 29.64, 12}, {29.64, 35.4, 18},    {35.4, 39.72, 18},
    {39.72, 45.24, 2}, {45.24, 52.32, 6}, {52.32, 63.48, 17}, {63.48, forever, 73},
};

// W. Nelson, 1982, p. 409: 432 turbine wheels, each looked at once, in hundreds of hours: age, sound,
// cracked; as printed in the documentation of SAS/QC, whose text says 435 while its table sums to 432.
constexpr std::array<std::array<double, 3>, 11> wheels = {{{4, 39, 0},
                                                           {10, 49, 4},
                                                           {14, 31, 2},
                                                           {18, 66, 7},
                                                           {22, 25, 5},
                                                           {26, 30, 9},
                                                           {30, 33, 9},
                                                           {34, 7, 6},
                                                           {38, 12, 22},
                                                           {42, 19, 21},
                                                           {46, 15, 21}}};

WeibullFit fitted(std::vector<CensoredLife> lives)
{
    const auto fit = fitWeibull({std::move(lives), {}, {}});
    REQUIRE(fit);
    return *fit;
}

std::string whyNot(const CensoredLives &data)
{
    const auto fit = fitWeibull(data);
    REQUIRE_FALSE(fit);
    CHECK_FALSE(fit.error().act.empty());
    return fit.error().what + "|" + fit.error().where;
}

bool says(const std::string &text, const char *words) { return text.find(words) != std::string::npos; }

} // namespace

TEST_CASE("cracks of 167 turbine parts")
{
    // R survreg, and SciPy's Nelder-Mead on the same likelihood, agree to 8 digits; 71.69 and 1.4854 are
    // printed with the data (from memory)
    const WeibullFit fit = fitted(cracks);
    CHECK(fit.scale() == Approx(71.69040556).epsilon(1e-8));
    CHECK(fit.shape() == Approx(1.485367365).epsilon(1e-8));
    CHECK(fit.logLikelihood == Approx(-309.6684089).epsilon(1e-9));
    // covariance of log scale and log sigma, to 1e-6 of each; log shape is minus log sigma
    CHECK(fit.covariance[0] / 0.005534784977 == Approx(1.0).epsilon(5e-7));
    CHECK(-fit.covariance[1] / 0.002622859112 == Approx(1.0).epsilon(5e-7));
    CHECK(fit.covariance[3] / 0.009733085267 == Approx(1.0).epsilon(5e-7));
    CHECK(fit.lives == 167.0);
    CHECK(fit.found == 94.0);
}

TEST_CASE("ages by which 1, 10 and 50 in 100 have cracked, and their limits")
{
    // R's qweibull on the fit; 90 % limits by the delta method on the log scale
    const WeibullFit fit = fitted(cracks);
    CHECK(std::exp(logAgeAt(fit, 0.01).value) == Approx(3.239372).epsilon(2e-7));
    CHECK(std::exp(logAgeAt(fit, 0.10).value) == Approx(15.757758).epsilon(1e-7));
    CHECK(std::exp(logAgeAt(fit, 0.50).value) == Approx(56.014351).epsilon(1e-7));
    const LogAge ten = logAgeAt(fit, 0.10);
    constexpr double z = 1.6448536269514722;
    CHECK(ten.error == Approx(0.1411656).epsilon(1e-6));
    CHECK(std::exp(ten.value - z * ten.error) == Approx(12.492595).epsilon(1e-6));
    CHECK(std::exp(ten.value + z * ten.error) == Approx(19.876330).epsilon(1e-6));
    CHECK(fit.shape() * std::exp(-z * fit.logShapeError()) == Approx(1.262870).epsilon(1e-6));
    CHECK(fit.shape() * std::exp(z * fit.logShapeError()) == Approx(1.747065).epsilon(1e-6));
}

TEST_CASE("432 turbine wheels, each looked at once")
{
    std::vector<CensoredLife> lives;
    for (const auto &[age, sound, cracked] : wheels) {
        lives.push_back({age, forever, sound});
        lives.push_back({0.0, age, cracked});
    }
    const WeibullFit fit = fitted(lives);
    CHECK(fit.lives == 432.0);
    CHECK(fit.scale() == Approx(46.77723025).epsilon(1e-8));
    CHECK(fit.shape() == Approx(2.175779909).epsilon(1e-8));
    CHECK(fit.logLikelihood == Approx(-189.2871934).epsilon(1e-9));
    CHECK(fit.covariance[0] / 0.004087883027 == Approx(1.0).epsilon(5e-7));
    CHECK(-fit.covariance[1] / 0.005599550095 == Approx(1.0).epsilon(5e-7));
    CHECK(fit.covariance[3] / 0.015492723417 == Approx(1.0).epsilon(5e-7));
}

TEST_CASE("a shape of 1 and exactly known ages: the mean is the estimate of the exponential law")
{
    // At the maximum of any exact sample the mean of (t / scale)^shape is 1: a closed form of its slope
    std::vector<CensoredLife> lives;
    for (const double t : {3.0, 7.0, 8.0, 15.0, 15.5, 31.0})
        lives.push_back({t, t, 1.0});
    const WeibullFit fit = fitted(lives);
    double mean = 0.0;
    double slope = 0.0; // sum of log t (h - 1) = n / shape
    for (const CensoredLife &life : lives) {
        const double h = std::pow(life.lower / fit.scale(), fit.shape());
        mean += h / 6.0;
        slope += std::log(life.lower) * (h - 1.0);
    }
    CHECK(mean == Approx(1.0).epsilon(1e-10));
    CHECK(slope == Approx(6.0 / fit.shape()).epsilon(1e-9));
}

TEST_CASE("derivatives of every kind of life, against differences of values")
{
    constexpr double step = 1e-5;
    for (const CensoredLife &life : {CensoredLife{5, forever}, CensoredLife{0, 9}, CensoredLife{5, 9},
                                     CensoredLife{8.999, 9}, CensoredLife{7, 7}, CensoredLife{5, 80}}) {
        CAPTURE(life.lower);
        CAPTURE(life.upper);
        const LogAges ages = logAgesOf(life);
        const double m = 2.3;
        const double s = -0.4;
        const LifeTerm t = lifeTerm(ages, m, s);
        const LifeTerm up = lifeTerm(ages, m + step, s);
        const LifeTerm down = lifeTerm(ages, m - step, s);
        const LifeTerm wide = lifeTerm(ages, m, s + step);
        const LifeTerm slim = lifeTerm(ages, m, s - step);
        CHECK((up.value - down.value) / (2 * step) == Approx(t.byLocation).epsilon(1e-6));
        CHECK((wide.value - slim.value) / (2 * step) == Approx(t.byLogSigma).epsilon(1e-6));
        CHECK((up.byLocation - down.byLocation) / (2 * step) == Approx(t.byLocationTwice).epsilon(1e-6));
        CHECK((up.byLogSigma - down.byLogSigma) / (2 * step) == Approx(t.byBoth).epsilon(1e-6));
        CHECK((wide.byLogSigma - slim.byLogSigma) / (2 * step) == Approx(t.byLogSigmaTwice).epsilon(1e-6));
    }
}

TEST_CASE("a narrow interval is the density times its width")
{
    // limit of S(a) - S(b); 1e-9 wide, where the plain difference has lost half of its digits
    const CensoredLife narrow{7.0, 7.0 + 7e-9};
    const LifeTerm chance = lifeTerm(logAgesOf(narrow), 2.3, -0.4);
    const LifeTerm density = lifeTerm(logAgesOf({7.0, 7.0}), 2.3, -0.4);
    const double width = narrow.upper - narrow.lower;
    CHECK(chance.value - std::log(width) == Approx(density.value).epsilon(1e-8));
    CHECK(chance.byLogSigmaTwice == Approx(density.byLogSigmaTwice).epsilon(1e-7));
}

TEST_CASE("another unit of time changes the scale alone")
{
    std::vector<CensoredLife> days = cracks;
    for (CensoredLife &life : days) {
        life.lower *= 30.4375;
        life.upper *= 30.4375;
    }
    const WeibullFit a = fitted(cracks);
    const WeibullFit b = fitted(days);
    CHECK(b.scale() == Approx(30.4375 * a.scale()).epsilon(1e-10));
    CHECK(b.shape() == Approx(a.shape()).epsilon(1e-10));
    CHECK(b.logLikelihood == Approx(a.logLikelihood).epsilon(1e-12)); // chances, not densities
}

TEST_CASE("where no law fits best, the error says which way it runs")
{
    CHECK(says(whyNot({{{5, forever}, {9, forever}, {2, forever}}, {}, {}}), "none of them failed"));
    CHECK(says(whyNot({{{5, 9}, {5, 9}, {5, 9}}, {}, {}}), "one age agrees with all"));
    CHECK(says(whyNot({{{0, 9}, {0, 12}, {5, forever}}, {}, {}}), "one age agrees with all"));
    CHECK(says(whyNot({{{0, 9}, {0, 12}}, {}, {}}), "one age agrees with all"));
    CHECK(says(whyNot({{{7, 7}, {7, 7}}, {}, {}}), "one age agrees with all"));
    CHECK(says(whyNot({{{5, 9}}, {}, {}}), "1 lives for 2 figures"));
    CHECK(says(whyNot({{{5, 9, 0.0}, {3, 7}}, {}, {}}), "1 lives for 2 figures"));
    CHECK(says(whyNot({{}, {}, {}}), "0 lives"));
    // every failure came before every pass: likelier the nearer the shape is to 0
    CHECK(says(whyNot({{{0, 3}, {0, 5}, {20, forever}, {30, forever}}, {}, {}}), "no Weibull law"));
    const std::vector<CensoredLife> four = {{0, 5}, {6, 9}, {3, 7}, {8, 12}};
    CHECK(says(whyNot({four, {"x"}, {2, 2, 2, 2}}), "covariate x is the same for all"));
    CHECK(says(whyNot({four, {"x", "y"}, {1, 2, 2, 4, 3, 6, 5, 10}}), "do not tell"));
}

TEST_CASE("figures that mean nothing, and the life they stand in")
{
    CHECK(whyNot({{{1, 2}, {5, 4}}, {}, {}}) == "upper is below lower|life 2");
    CHECK(whyNot({{{1, 2}, {-1, 4}}, {}, {}}) == "a negative age in lower|life 2");
    CHECK(whyNot({{{NAN, 2}}, {}, {}}) == "not a number|life 1");
    CHECK(whyNot({{{1, NAN}}, {}, {}}) == "not a number|life 1");
    CHECK(whyNot({{{forever, forever}}, {}, {}}) == "not a number|life 1");
    CHECK(whyNot({{{1, 2, -3}}, {}, {}}) == "a negative weight|life 1");
    CHECK(whyNot({{{0, 0}}, {}, {}}) == "a life of length 0|life 1");
    CHECK(whyNot({{{1, 2}}, {"x"}, {NAN}}) == "a covariate that is not a finite number|life 1");
    CHECK(says(whyNot({{{1, 2}}, {"x"}, {}}), "do not fit"));
}
