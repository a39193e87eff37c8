// SPDX-License-Identifier: Apache-2.0
// Line, Fieller's set, gamma wear and the functions behind them, against figures computed apart from this
// code with SciPy 1.10 (linregress, gammaincc, stats.t) and against closed forms.
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "due/special_functions.hpp"
#include "due/trend/condition.hpp"

using namespace snugwalk;
using doctest::Approx;

namespace {

// Tread in mm against thousands of km, with the road-legal limit used in the check.
constexpr std::array tread = {XY{0, 10.2}, XY{5, 9.1}, XY{11, 8.1}, XY{16, 6.8}, XY{22, 5.9}};
constexpr double limit = 3.2;

} // namespace

TEST_CASE("least squares line of five tread depths")
{
    // scipy.stats.linregress
    const LineFit fit = fitLine(tread).value();
    CHECK(fit.n == 5);
    CHECK(fit.slope == Approx(-0.197754293).epsilon(1e-8));
    CHECK(fit.intercept == Approx(10.155746367).epsilon(1e-9));
    CHECK(fit.slopeSe == Approx(0.008554287).epsilon(5e-10));
    CHECK(fit.s == Approx(0.148854425).epsilon(1e-8));
}

TEST_CASE("Fieller's set where the tread meets its limit")
{
    // [FIELLER-1954]; roots computed with numpy.roots, t from scipy.stats.t.ppf(0.95, 3)
    const LineFit fit = fitLine(tread).value();
    const Crossing line = crossingOf(fit, limit, 0.9);
    CHECK(line.likely.value() == Approx(35.173681).epsilon(1e-7));
    CHECK(line.early.value() == Approx(32.798267).epsilon(1e-7));
    CHECK(line.late.value() == Approx(38.059564).epsilon(1e-7));
    CHECK(line.g == Approx(0.010363198).epsilon(5e-10));
    const Crossing reading = crossingOf(fit, limit, 0.9, CrossingOf::Reading);
    CHECK(reading.likely == line.likely);
    CHECK(reading.early.value() == Approx(32.252258).epsilon(1e-7));
    CHECK(reading.late.value() == Approx(38.605572).epsilon(1e-7));
}

TEST_CASE("a slope that could as well be flat determines nothing")
{
    constexpr std::array noise = {XY{0, 5.0}, XY{1, 5.4}, XY{2, 4.7}, XY{3, 5.1}};
    const Crossing crossing = crossingOf(fitLine(noise).value(), 3.2, 0.9);
    CHECK(crossing.g >= 1.0);
    CHECK_FALSE(crossing.early);
    CHECK_FALSE(crossing.late);
    constexpr std::array flat = {XY{0, 5.0}, XY{1, 5.0}, XY{2, 5.0}};
    CHECK_FALSE(crossingOf(fitLine(flat).value(), 3.2, 0.9).likely);
}

TEST_CASE("no line under three points, of one x, or through what is no number")
{
    CHECK_FALSE(fitLine(std::array{XY{0, 1}, XY{1, 2}}));
    CHECK_FALSE(fitLine(std::array{XY{1, 1}, XY{1, 2}, XY{1, 3}}));
    CHECK_FALSE(fitLine(std::array{XY{0, 1}, XY{1, NAN}, XY{2, 3}}));
    CHECK_FALSE(fitLine(std::array{XY{0, 1}, XY{HUGE_VAL, 2}, XY{2, 3}}));
}

TEST_CASE("the median of slopes")
{
    // the seven pairs of [SEN-1968], whose slope is 4 there; from memory
    constexpr std::array sen = {XY{1, 9},   XY{2, 15},  XY{3, 19}, XY{4, 20},
                                XY{10, 45}, XY{12, 55}, XY{18, 78}};
    CHECK(medianSlope(sen).value() == Approx(4.0));
    CHECK_FALSE(medianSlope(std::array{XY{1, 1}, XY{1, 2}}));
}

TEST_CASE("one wild reading is told, the last never, two never")
{
    const std::array steady = {XY{0, 10}, XY{1, 9}, XY{2, 8}, XY{3, 7}, XY{4, 6}, XY{5, 5}};
    CHECK_FALSE(lonelyOutlier(steady, 0.75));
    auto wild = steady;
    wild[2].y = 3.0;
    CHECK(lonelyOutlier(wild, 0.75) == std::optional<std::size_t>(2));
    CHECK_FALSE(lonelyOutlier(wild, 6.0)); // within what can be read
    auto last = steady;
    last[5].y = 1.0;
    CHECK_FALSE(lonelyOutlier(last, 0.75));
    wild[3].y = 12.0;
    CHECK_FALSE(lonelyOutlier(wild, 0.75));
}

TEST_CASE("gamma wear: shape 0.5 a month, rate 2, limit 3")
{
    // scipy.special.gammaincc(0.5 t, 6), and its quantiles by brentq; model of [VANNOORTWIJK-2009]
    const GammaWear wear{0.5, 2.0};
    CHECK(chanceWithin(wear, 3.0, 6.0) == Approx(0.0619688044).epsilon(1e-8));
    CHECK(chanceWithin(wear, 3.0, 12.0) == Approx(0.4456796414).epsilon(1e-8));
    CHECK(chanceWithin(wear, 3.0, 18.0) == Approx(0.8472374940).epsilon(1e-8));
    CHECK(timeUntil(wear, 3.0, 0.1) == Approx(6.987451).epsilon(1e-7));
    CHECK(timeUntil(wear, 3.0, 0.5) == Approx(12.660062).epsilon(1e-7));
    CHECK(timeUntil(wear, 3.0, 0.9) == Approx(19.441795).epsilon(1e-7));
    CHECK(chanceWithin(wear, 3.0, 0.0) == 0.0);
    CHECK(chanceWithin(wear, 0.0, 1.0) == 1.0);
}

TEST_CASE("Student's t")
{
    // scipy.stats.t.ppf; the rows of any printed table
    CHECK(studentQuantile(0.95, 3.0) == Approx(2.353363435).epsilon(1e-9));
    CHECK(studentQuantile(0.975, 1.0) == Approx(12.706204736).epsilon(1e-9));
    CHECK(studentQuantile(0.975, 10.0) == Approx(2.228138852).epsilon(1e-9));
    CHECK(studentQuantile(0.025, 10.0) == Approx(-2.228138852).epsilon(1e-9));
    CHECK(studentQuantile(0.5, 4.0) == Approx(0.0).epsilon(1e-9));
    CHECK(studentQuantile(0.975, 1e6) == Approx(1.959963985).epsilon(1e-5)); // towards the normal
}

TEST_CASE("incomplete beta and gamma functions have closed forms here and there")
{
    // [DLMF] 8.17.7 with a or b of 1, 8.4.6 (a = 1/2 is erfc), 8.4.5 (a = 1 is an exponential)
    for (const double x : {0.01, 0.2, 0.5, 0.8, 0.999}) {
        CAPTURE(x);
        CHECK(betaRegularized(1.0, 7.5, x) == Approx(1.0 - std::pow(1.0 - x, 7.5)).epsilon(1e-12));
        CHECK(betaRegularized(2.5, 1.0, x) == Approx(std::pow(x, 2.5)).epsilon(1e-12));
        CHECK(betaRegularized(0.5, 0.5, x) ==
              Approx(2.0 / std::acos(-1.0) * std::asin(std::sqrt(x))).epsilon(1e-12));
        CHECK(gammaUpper(1.0, 9.0 * x) == Approx(std::exp(-9.0 * x)).epsilon(1e-12));
        CHECK(gammaUpper(0.5, 9.0 * x) == Approx(std::erfc(std::sqrt(9.0 * x))).epsilon(1e-12));
    }
    CHECK(betaRegularized(3.0, 4.0, 0.0) == 0.0);
    CHECK(betaRegularized(3.0, 4.0, 1.0) == 1.0);
    CHECK(gammaUpper(3.0, 0.0) == 1.0);
}
