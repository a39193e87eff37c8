// SPDX-License-Identifier: Apache-2.0
// Star orders. [PCC-1] the legacy cross pattern of 4 and 8 studs, from memory; 5 and 6 as US Army wheel
// manuals and the trade have them (common practice).
#include "../sourced.hpp"

#include <algorithm>
#include <numeric>

#include "bench/wheels/star_order.hpp"

using namespace snugwalk;

TEST_CASE("4, 5, 6 and 8 studs")
{
    const struct {
        const char *source;
        std::vector<int> order;
    } rows[] = {{"PCC-1", {1, 3, 2, 4}},
                {"CP", {1, 3, 5, 2, 4}},
                {"CP", {1, 4, 2, 5, 3, 6}},
                {"PCC-1", {1, 5, 3, 7, 2, 6, 4, 8}}};
    for (const auto &row : rows) {
        const auto order = starOrder(static_cast<int>(row.order.size())).value();
        CHECK(order == row.order);
        SOURCED(row.source, order == row.order ? 0.0 : 1.0, 0.0, 0.0);
    }
}

TEST_CASE("every count: each stud once; from five on never the neighbor next; even ones across the wheel")
{
    for (int n = 3; n <= 16; ++n) {
        CAPTURE(n);
        const std::vector<int> order = starOrder(n).value();
        std::vector<int> sorted = order;
        std::sort(sorted.begin(), sorted.end());
        std::vector<int> all(static_cast<std::size_t>(n));
        std::iota(all.begin(), all.end(), 1);
        REQUIRE(sorted == all);
        for (std::size_t i = 1; i < order.size(); ++i) {
            const int apart = std::abs(order[i] - order[i - 1]);
            const int round = std::min(apart, n - apart);
            if (n >= 5)
                CHECK(round >= 2);
            if (n % 2 == 0 && i % 2 == 1)
                CHECK(round == n / 2);
        }
    }
    CHECK(starOrder(2).error().where == "studs");
    CHECK(starOrder(17).error().where == "studs");
}
