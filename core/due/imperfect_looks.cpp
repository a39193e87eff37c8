// SPDX-License-Identifier: Apache-2.0
// Sums over the gaps between looks, newest first, in survival terms that do not cancel.
#include "due/imperfect_looks.hpp"

#include <algorithm>
#include <cmath>

#include "base/contract.hpp"

namespace snugwalk {
namespace {

constexpr double negligible = 1e-9;

// A life given that it works at the age it was born: hazards count from there, so that an old part
// does not underflow.
struct Given {
    const WeibullLife &life;
    double born;
    [[nodiscard]] double hazard(double age) const { return life.hazard(age) - life.hazard(born); }
    [[nodiscard]] double survival(double age) const { return std::exp(-hazard(age)); }
    /// S(a) - S(b) for a <= b, without cancellation.
    [[nodiscard]] double failsBetween(double a, double b) const
    {
        const double first = hazard(a);
        return std::exp(-first) * -std::expm1(-(hazard(b) - first));
    }
};

// What failed before the last look and was missed by every look since, newest gap first.
double missedMass(const Given &life, std::span<const LookAtAge> passes)
{
    double sum = 0.0;
    double missed = 1.0;
    for (std::size_t j = passes.size(); j > 0; --j) {
        missed *= 1.0 - passes[j - 1].sensitivity;
        if (missed <= 0.0)
            break;
        sum += life.failsBetween(j > 1 ? passes[j - 2].age : life.born, passes[j - 1].age) * missed;
    }
    return sum;
}

double lastAge(LooksOfLife looks) { return looks.passes.empty() ? looks.born : looks.passes.back().age; }

} // namespace

double WeibullLife::hazard(double age) const { return age <= 0.0 ? 0.0 : std::pow(age / scale, shape); }
double WeibullLife::survival(double age) const { return std::exp(-hazard(age)); }

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

double likelihoodOfPasses(const WeibullLife &life, LooksOfLife looks)
{
    const Given given{life, looks.born};
    return given.survival(lastAge(looks)) + missedMass(given, looks.passes);
}

double missedSoFar(const WeibullLife &life, LooksOfLife looks)
{
    return presentBy(life, looks, lastAge(looks));
}

double presentBy(const WeibullLife &life, LooksOfLife looks, double age)
{
    const double last = lastAge(looks);
    SNUG_ASSERT(age >= last);
    // 1 - S(age)/L with L = S(last) + missed, without the difference of two near ones
    const Given given{life, looks.born};
    const double missed = missedMass(given, looks.passes);
    const double all = given.survival(last) + missed;
    return all > 0.0 ? std::min((given.failsBetween(last, age) + missed) / all, 1.0) : 1.0;
}

double likelihoodOfFinding(const WeibullLife &life, LooksOfLife looks, LookAtAge found, double alarm)
{
    const Given given{life, looks.born};
    const double fresh = given.failsBetween(lastAge(looks), found.age);
    return (fresh + missedMass(given, looks.passes)) * found.sensitivity + alarm * given.survival(found.age);
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
