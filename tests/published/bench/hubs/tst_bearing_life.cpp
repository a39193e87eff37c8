// SPDX-License-Identifier: Apache-2.0
// Rolling bearings: [ISO-281] as bearing makers restate it, worked problems of [SHIGLEY] chapter 11 as an
// instructor solved them, and the same figures computed apart (SciPy 1.10).
#include "../sourced.hpp"

#include <algorithm>
#include <cmath>

#include "base/units.hpp"
#include "bench/hubs/bearing_life.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

constexpr double poundForce = 0.45359237 * 9.80665;
Force newtons(double v) { return Force::fromSi(v); }
double megaTurns(RollingElement kind, double rating, double load, double reliability = 0.9)
{
    return bearingTurns({kind, newtons(rating), newtons(load), reliability}).value().value / 1e6;
}

} // namespace

TEST_CASE("a bearing maker's worked example: C/P = 6 gives 216 million turns, 2,400 h at 1,500 a minute")
{
    const double turns = megaTurns(RollingElement::Ball, 6000, 1000);
    SOURCED("ISO-281", turns, 216.0, 1e-9);
    SOURCED("ISO-281", turns * 1e6 / (60.0 * 1500.0), 2400.0, 1e-9);
    SOURCED("ISO-281", megaTurns(RollingElement::Roller, 6000, 1000), 392.498, half(0.001));
}

TEST_CASE("[SHIGLEY] example 11-1: 400 lbf for 5,000 h at 1,725 a minute asks for 3,211 lbf")
{
    const double wanted = 5000.0 * 60.0 * 1725.0 / 1e6;
    // life goes by the cube of the rating, so the rating asked for follows from the life of any other
    const double life = megaTurns(RollingElement::Ball, 4000 * poundForce, 400 * poundForce);
    const double asked = 4000 * std::cbrt(wanted / life);
    SOURCED("SHIGLEY", asked, 3211.4, half(0.1));
    SOURCED("computed", asked, 3211.417547, half(1e-6));
}

TEST_CASE("[SHIGLEY] problems 11-1 and 11-2: rating asked for, and the reliability of the bearing taken")
{
    const auto c1 = bearingRatingFor(RollingElement::Ball, newtons(2278), 540, 0.90).value();
    SOURCED("SHIGLEY", c1.si() / 1000, 18.59, half(0.01));
    SOURCED("computed", c1.si() / 1000, 18.591645, half(1e-6));
    const double r1 = bearingReliability(RollingElement::Ball, newtons(19500), newtons(2278), 540).value();
    SOURCED("SHIGLEY", r1, 0.919, half(0.001));
    SOURCED("computed", r1, 0.918683, half(1e-6));

    const auto c2 = bearingRatingFor(RollingElement::Ball, newtons(3800), 1440, 0.90).value();
    SOURCED("SHIGLEY", c2.si() / 1000, 43.0, half(0.1));
    SOURCED("computed", c2.si() / 1000, 43.006813, half(1e-6));
    const double r2 = bearingReliability(RollingElement::Ball, newtons(46200), newtons(3800), 1440).value();
    SOURCED("SHIGLEY", r2, 0.927, half(0.001));
    SOURCED("computed", r2, 0.926768, half(1e-6));
}

TEST_CASE("[SHIGLEY] problem 11-3, rollers: 91.1 kN by the plain law, and 0.942 with 102 kN")
{
    const double asked = 100.0 * std::pow(1440.0 / megaTurns(RollingElement::Roller, 100'000, 10279), 0.3);
    SOURCED("SHIGLEY", asked, 91.1, half(0.1));
    SOURCED("computed", asked, 91.087674, half(1e-6));
    const double r =
        bearingReliability(RollingElement::Roller, newtons(102000), newtons(10279), 1440).value();
    SOURCED("SHIGLEY", r, 0.942, half(0.001));
    SOURCED("computed", r, 0.941772, half(1e-6));
}

TEST_CASE("computed apart: 20 kN under 4 kN rolls 470,243 km on a tire of 2.2 m a turn")
{
    const auto km = bearingDistance({RollingElement::Roller, newtons(20000), newtons(4000)}, metres(2.2));
    SOURCED("computed", megaTurns(RollingElement::Roller, 20000, 4000), 213.747, half(0.001));
    SOURCED("computed", km.value().value / 1000.0, 470243, half(1));
    CHECK(km.value().unit == "m");
}

TEST_CASE("a tenth more load takes 27 % of a roller bearing's life")
{
    const double ratio =
        megaTurns(RollingElement::Roller, 20000, 4400) / megaTurns(RollingElement::Roller, 20000, 4000);
    SOURCED("computed", ratio - 1.0, -0.27, half(0.01));
}

TEST_CASE("[ISO-281] 2007, from memory: the factor on life for more reliability")
{
    const struct {
        double reliability, a1;
    } rows[] = {{0.90, 1.0}, {0.95, 0.64}, {0.96, 0.55}, {0.97, 0.47}, {0.98, 0.37}, {0.99, 0.25}};
    for (const auto &row : rows) {
        CHECK(lifeFactor(row.reliability).value() == row.a1);
        CHECK(megaTurns(RollingElement::Ball, 6000, 1000, row.reliability) ==
              doctest::Approx(216.0 * row.a1).epsilon(1e-12));
    }
    CHECK_FALSE(lifeFactor(0.93).has_value());
    // the older set .62 .53 .44 .33 .21 is a Weibull law of slope 1.5; the newer one lies above it
    const double older = std::pow(std::log(1 / 0.95) / std::log(1 / 0.90), 1 / 1.5);
    SOURCED("ISO-281", older, 0.6189, half(0.0001));
    CHECK(lifeFactor(0.95).value() > older);
    const struct {
        double reliability, weibull;
    } set[] = {{0.95, 0.6189}, {0.96, 0.5315}, {0.97, 0.4372}, {0.98, 0.3325}, {0.99, 0.2088}};
    for (const auto &row : set) {
        const double law = std::pow(std::log(1 / row.reliability) / std::log(1 / 0.90), 1 / 1.5);
        SOURCED("computed", law, row.weibull, half(0.0001));
        CHECK(lifeFactor(row.reliability).value() > law);
    }
}

TEST_CASE("life is told as an upper bound, and not at all where the law ends")
{
    const auto life = bearingTurns({RollingElement::Roller, newtons(20000), newtons(4000)}).value();
    CHECK(life.low == 0.0);
    CHECK(life.high == life.value);
    CHECK(std::find(life.warnings.begin(), life.warnings.end(), "upper_bound") != life.warnings.end());
    const auto over = bearingTurns({RollingElement::Roller, newtons(20000), newtons(10001)});
    REQUIRE_FALSE(over);
    CHECK(over.error().where == "load");
    CHECK(over.error().act.find("static") != std::string::npos);
}

TEST_CASE("P = X Fr + Y Fa")
{
    CHECK(equivalentLoad(newtons(4000), newtons(1000), 0.4, 1.6).si() == doctest::Approx(3200.0));
}
