// SPDX-License-Identifier: Apache-2.0
// Terms of passes, findings between two ages, and exactly known ages.
#include "due/life/weibull_terms.hpp"

#include <cmath>

namespace snugwalk {
namespace {

// H or a difference of two H, with derivatives by (m, s).
struct Hazard {
    double value = 0.0, m = 0.0, s = 0.0, mm = 0.0, ms = 0.0, ss = 0.0;
};

// w = (log t - m) / sigma: dw/dm = -1 / sigma, dw/ds = -w.
Hazard hazardAt(double w, double perSigma)
{
    const double h = std::exp(w);
    return {h, -h * perSigma, -w * h, h * perSigma * perSigma, h * (1.0 + w) * perSigma, h * w * (1.0 + w)};
}

Hazard gained(double wLower, double wUpper, double width, double perSigma)
{
    if (width * perSigma > 1.0) { // far apart, or from age 0: nothing cancels
        const Hazard b = hazardAt(wUpper, perSigma);
        const Hazard a = std::isfinite(wLower) ? hazardAt(wLower, perSigma) : Hazard();
        return {b.value - a.value, b.m - a.m, b.s - a.s, b.mm - a.mm, b.ms - a.ms, b.ss - a.ss};
    }
    const double a = std::exp(wLower);
    const double step = width * perSigma; // wUpper - wLower
    const double d = a * std::expm1(step);
    return {d,
            -d * perSigma,
            -(wUpper * d + step * a),
            d * perSigma * perSigma,
            ((1.0 + wUpper) * d + step * a) * perSigma,
            wUpper * (1.0 + wUpper) * d + step * (1.0 + wLower + wUpper) * a};
}

} // namespace

LogAges logAgesOf(const CensoredLife &life)
{
    LogAges ages{std::log(life.lower), std::log(life.upper), HUGE_VAL};
    if (life.lower > 0.0 && life.found())
        ages.width = std::log1p((life.upper - life.lower) / life.lower);
    return ages;
}

LifeTerm lifeTerm(const LogAges &ages, double location, double logSigma)
{
    const double perSigma = std::exp(-logSigma);
    const double wLower = (ages.lower - location) * perSigma;
    LifeTerm term;
    if (std::isfinite(ages.lower)) { // it passed at lower, or failed right then
        const Hazard h = hazardAt(wLower, perSigma);
        term = {-h.value, -h.m, -h.s, -h.mm, -h.ms, -h.ss};
    }
    if (ages.width <= 0.0) {
        term.value += wLower - logSigma - ages.lower;
        term.byLocation -= perSigma;
        term.byLogSigma -= wLower + 1.0;
        term.byBoth += perSigma;
        term.byLogSigmaTwice += wLower;
        return term;
    }
    if (!std::isfinite(ages.upper))
        return term;
    const Hazard d = gained(wLower, (ages.upper - location) * perSigma, ages.width, perSigma);
    const double g = 1.0 / std::expm1(d.value); // of log(1 - exp(-d))
    const double gg = -g * (1.0 + g);
    term.value += std::log(-std::expm1(-d.value));
    term.byLocation += g * d.m;
    term.byLogSigma += g * d.s;
    term.byLocationTwice += g * d.mm + gg * d.m * d.m;
    term.byBoth += g * d.ms + gg * d.m * d.s;
    term.byLogSigmaTwice += g * d.ss + gg * d.s * d.s;
    return term;
}

} // namespace snugwalk
