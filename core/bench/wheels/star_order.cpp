// SPDX-License-Identifier: Apache-2.0
// Steps for odd counts, pairs for even ones.
#include "bench/wheels/star_order.hpp"

#include <algorithm>
#include <cstdlib>

namespace snugwalk {
namespace {

std::vector<int> oddOrder(int n)
{
    std::vector<int> order;
    for (int k = 0; k < n; ++k)
        order.push_back(k * ((n - 1) / 2) % n + 1);
    return order;
}

std::vector<int> evenOrder(int n)
{
    const int half = n / 2;
    std::vector<int> done{0};
    while (static_cast<int>(done.size()) < half) {
        int best = -1;
        int farthest = 0;
        for (int pair = 0; pair < half; ++pair) {
            int nearest = half;
            for (const int other : done) {
                const int apart = std::abs(pair - other);
                nearest = std::min({nearest, apart, half - apart});
            }
            if (nearest > farthest) {
                farthest = nearest;
                best = pair;
            }
        }
        done.push_back(best);
    }
    std::vector<int> order;
    for (const int pair : done) {
        order.push_back(pair + 1);
        order.push_back(pair + half + 1);
    }
    return order;
}

} // namespace

Result<std::vector<int>> starOrder(int studs)
{
    if (studs < 3 || studs > 16)
        return Error{Errc::OutOfRange, "no wheel has " + std::to_string(studs) + " studs", "studs",
                     "give 3 to 16"};
    return studs % 2 == 1 ? oddOrder(studs) : evenOrder(studs);
}

} // namespace snugwalk
