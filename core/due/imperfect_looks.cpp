// SPDX-License-Identifier: Apache-2.0
// Sums over the gaps between looks, newest first, in survival terms that do not cancel.
#include "due/imperfect_looks.hpp"

#include <algorithm>
#include <cmath>

#include "base/contract.hpp"

namespace snugwalk {
namespace {

constexpr double negligible = 1e-9;

MissedLooks missedBy(const WeibullLife &life, LooksOfLife looks)
{
    const double born = life.hazard(looks.born);
    return missedBy(looks.passes, [&](std::size_t j) { return life.hazard(looks.passes[j].age) - born; });
}

double lastAge(LooksOfLife looks) { return looks.passes.empty() ? looks.born : looks.passes.back().age; }

} // namespace

double WeibullLife::hazard(double age) const { return age <= 0.0 ? 0.0 : std::pow(age / scale, shape); }
double WeibullLife::survival(double age) const { return std::exp(-hazard(age)); }

double failsBetween(double hazardBefore, double hazardAfter)
{
    return std::exp(-hazardBefore) * -std::expm1(-(hazardAfter - hazardBefore));
}

double sensitivityOf(LookedHow how)
{
    switch (how) {
    case LookedHow::Measured:
        return 0.98;
    case LookedHow::Looked:
        return 0.85;
    case LookedHow::Glance:
        return 0.7;
    }
    return 0.7;
}

SeenThrough seenThrough(const WeibullLife &life, LooksOfLife looks, double age)
{
    SNUG_ASSERT(age >= lastAge(looks));
    const MissedLooks missed = missedBy(life, looks);
    const double hazard = life.hazard(age) - life.hazard(looks.born);
    // 1 - S(age)/L with L = S(last) + missed, without the difference of two near ones
    const double all = std::exp(-missed.hazard) + missed.mass;
    if (all <= 0.0)
        return {0.0, 1.0, 1.0};
    return {all, missed.mass / all, std::min((failsBetween(missed.hazard, hazard) + missed.mass) / all, 1.0)};
}

double likelihoodOfPasses(const WeibullLife &life, LooksOfLife looks)
{
    return seenThrough(life, looks, lastAge(looks)).likelihood;
}

double missedSoFar(const WeibullLife &life, LooksOfLife looks)
{
    return seenThrough(life, looks, lastAge(looks)).missed;
}

double presentBy(const WeibullLife &life, LooksOfLife looks, double age)
{
    return seenThrough(life, looks, age).present;
}

double likelihoodOfFinding(const WeibullLife &life, LooksOfLife looks, LookAtAge found, double alarm)
{
    const MissedLooks missed = missedBy(life, looks);
    const double hazard = life.hazard(found.age) - life.hazard(looks.born);
    return (failsBetween(missed.hazard, hazard) + missed.mass) * found.sensitivity +
           alarm * std::exp(-hazard);
}

std::span<const LookAtAge> looksThatMatter(std::span<const LookAtAge> passes)
{
    double missed = 1.0;
    for (std::size_t j = passes.size(); j > 0; --j) {
        missed *= 1.0 - passes[j - 1].sensitivity;
        if (missed < negligible)
            return passes.subspan(j - 1);
    }
    return passes;
}

} // namespace snugwalk
