// SPDX-License-Identifier: Apache-2.0
// Binomial tails, a beta tail, and the step-up rule.
#include "compare/statistics.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

#include "base/contract.hpp"
#include "due/special_functions.hpp"

namespace snugwalk {

double twoSidedP(double z) { return std::erfc(std::abs(z) / std::numbers::sqrt2); }

double mcnemarExact(int better, int worse)
{
    SNUG_ASSERT(better >= 0 && worse >= 0);
    const int few = std::min(better, worse);
    if (few == std::max(better, worse))
        return 1.0;
    // P(X <= few) of a fair coin is the beta tail I_{1/2}(n - few, few + 1)
    const double tail = betaRegularized(better + worse - few, few + 1.0, 0.5);
    return std::min(1.0, 2.0 * tail);
}

double chanceRateUp(int better, int worse)
{
    SNUG_ASSERT(better >= 0 && worse >= 0);
    return betaRegularized(better + 0.5, worse + 0.5, 0.5);
}

std::vector<bool> standAmongMany(const std::vector<double> &p, double rate)
{
    std::vector<std::size_t> order(p.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return p[a] < p[b]; });
    std::size_t stand = 0;
    for (std::size_t k = 0; k < order.size(); ++k) {
        if (p[order[k]] <= rate * static_cast<double>(k + 1) / static_cast<double>(p.size()))
            stand = k + 1;
    }
    std::vector<bool> stands(p.size(), false);
    for (std::size_t k = 0; k < stand; ++k)
        stands[order[k]] = true;
    return stands;
}

} // namespace snugwalk
