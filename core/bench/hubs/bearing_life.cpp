// SPDX-License-Identifier: Apache-2.0
// The power law of rolling fatigue, and the spread around it.
#include "bench/hubs/bearing_life.hpp"

#include <array>
#include <cmath>

#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

struct Factor {
    double reliability;
    double a1;
};
constexpr std::array factors = {Factor{0.90, 1.0},  Factor{0.95, 0.64}, Factor{0.96, 0.55},
                                Factor{0.97, 0.47}, Factor{0.98, 0.37}, Factor{0.99, 0.25}};
constexpr double leastForce = 1.0; // N
constexpr double mostForce = 1e7;
// Weibull parameters of life over rating life: threshold, scale, shape.
constexpr double threshold = 0.02;
constexpr double scale = 4.439;
constexpr double shape = 1.483;

double exponentOf(RollingElement kind) { return kind == RollingElement::Ball ? 3.0 : 10.0 / 3.0; }

Status checkForce(Force f, const char *where)
{
    return within(leastForce, f.si(), mostForce,
                  {Errc::OutOfRange, "no trailer bearing carries that", where,
                   "give a force with its unit, such as 4 kN or 900 lbf"});
}

Status checkTurns(double million)
{
    return within(1e-9, million, 1e9,
                  {Errc::OutOfRange, "no such number of turns", "turns", "give it in millions of turns"});
}

} // namespace

Force equivalentLoad(Force radial, Force axial, double x, double y) { return radial * x + axial * y; }

std::optional<double> lifeFactor(double reliability)
{
    for (const Factor &f : factors) {
        if (std::fabs(f.reliability - reliability) < 1e-9)
            return f.a1;
    }
    return std::nullopt;
}

Result<Estimate> bearingTurns(const BearingLoad &b)
{
    SNUG_TRY(checkForce(b.rating, "rating"));
    SNUG_TRY(checkForce(b.load, "load"));
    const auto a1 = lifeFactor(b.reliability);
    if (!a1)
        return Error{Errc::OutOfRange, "no factor is printed for that reliability", "reliability",
                     "give 90, 95, 96, 97, 98 or 99 %"};
    if (b.load * 2.0 > b.rating)
        return Error{Errc::OutOfRange, "the load is over half the dynamic rating, where the law ends", "load",
                     "compare it with the bearing maker's static rating first"};
    const double turns = *a1 * 1e6 * std::pow(b.rating / b.load, exponentOf(b.kind));
    Estimate e = between(0.0, turns, turns, {"1", "published", "ISO-281"});
    e.warnings = {"upper_bound"};
    return e;
}

Result<Estimate> bearingDistance(const BearingLoad &bearing, Length circumference)
{
    SNUG_TRY(within(0.5, circumference.si(), 5.0,
                    {Errc::OutOfRange, "no tire rolls that far in a turn", "circumference",
                     "give the way of one turn, such as 2.2 m"}));
    Result<Estimate> turns = bearingTurns(bearing);
    if (!turns)
        return turns.error();
    turns->value *= circumference.si();
    turns->high = turns->value;
    turns->unit = "m";
    return turns;
}

Result<double> bearingReliability(RollingElement kind, Force rating, Force load, double million)
{
    SNUG_TRY(checkForce(rating, "rating"));
    SNUG_TRY(checkForce(load, "load"));
    SNUG_TRY(checkTurns(million));
    const double x = million * std::pow(load / rating, exponentOf(kind));
    return x <= threshold ? 1.0 : std::exp(-std::pow((x - threshold) / scale, shape));
}

Result<Force> bearingRatingFor(RollingElement kind, Force load, double million, double reliability)
{
    SNUG_TRY(checkForce(load, "load"));
    SNUG_TRY(checkTurns(million));
    SNUG_TRY(within(0.5, reliability, 0.999,
                    {Errc::OutOfRange, "no such reliability", "reliability", "give 50 to 99.9 %"}));
    const double x = threshold + scale * std::pow(-std::log(reliability), 1.0 / shape);
    return load * std::pow(million / x, 1.0 / exponentOf(kind));
}

} // namespace snugwalk
