// SPDX-License-Identifier: Apache-2.0
// Newton's method on the condition of least cost, and a power.
#include "due/life/cost_interval.hpp"

#include <cmath>

#include "base/contract.hpp"

namespace snugwalk {

double costUntilFound(const LookCosts &costs, double interval)
{
    SNUG_ASSERT(costs.rate > 0.0 && interval > 0.0);
    return (costs.look + costs.unseen * interval) / -std::expm1(-costs.rate * interval) -
           costs.unseen / costs.rate;
}

double cheapestInterval(const LookCosts &costs)
{
    SNUG_ASSERT(costs.rate > 0.0 && costs.look > 0.0 && costs.unseen > 0.0);
    const double target = costs.rate * costs.look / costs.unseen;
    // exp(x) - 1 - x is convex and at least x^2 / 2: from the right, Newton only comes down to the root
    double x = std::sqrt(2.0 * target);
    if (x > 1.0)
        x = std::log1p(target) + 1.0;
    for (int i = 0; i < 100; ++i) {
        const double next = x - (std::expm1(x) - x - target) / std::expm1(x);
        if (std::abs(next - x) <= 1e-15 * x)
            break;
        x = next;
    }
    return x / costs.rate;
}

double seenByOneOf(int looks, double sensitivity)
{
    SNUG_ASSERT(looks >= 0 && sensitivity >= 0.0 && sensitivity <= 1.0);
    return 1.0 - std::pow(1.0 - sensitivity, looks);
}

} // namespace snugwalk
