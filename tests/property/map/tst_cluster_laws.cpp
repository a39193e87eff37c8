// SPDX-License-Identifier: Apache-2.0
// What holds of any gathering of spots.
#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

#include <doctest/doctest.h>

#include "map/clusters.hpp"

using namespace snugwalk;

namespace {

double away(const PaperSpot &a, const PaperSpot &b)
{
    return std::max(std::abs(a.x - b.x), std::abs(a.y - b.y));
}

// Crowded and lonely, some at the very same place, some on the edge of a cell.
std::vector<PaperSpot> someSpots(unsigned seed)
{
    std::mt19937 rng(seed);
    std::uniform_real_distribution<double> wide(-300.0, 300.0);
    std::normal_distribution<double> narrow(0.0, 30.0);
    std::uniform_int_distribution<int> weight(0, 4);
    std::vector<PaperSpot> spots;
    const unsigned count = seed % 7 == 0 ? seed % 3 : 40 + seed % 160;
    for (unsigned i = 0; i < count; ++i) {
        if (i % 9 == 4)
            spots.push_back({spots.back().x, spots.back().y, weight(rng)});
        else if (i % 9 == 5)
            spots.push_back({48.0 * std::round(narrow(rng)), 48.0 * std::round(narrow(rng)), weight(rng)});
        else
            spots.push_back(i % 2 == 0 ? PaperSpot{wide(rng), wide(rng), weight(rng)}
                                       : PaperSpot{narrow(rng), narrow(rng), weight(rng)});
    }
    return spots;
}

template <typename Check>
void forManyMaps(Check check)
{
    for (unsigned seed = 0; seed < 200; ++seed) {
        CAPTURE(seed);
        const double least = seed % 5 == 0 ? 1e-3 : seed % 5 == 1 ? 1e4 : 48.0;
        check(someSpots(seed), least);
    }
}

} // namespace

TEST_CASE("every spot is in exactly one cluster, within reach of its head, which no nearer head outdoes")
{
    forManyMaps([](const std::vector<PaperSpot> &spots, double least) {
        const auto clusters = clustersOf(spots, least);
        std::vector<int> met(spots.size());
        for (const SpotCluster &cluster : clusters) {
            CHECK(std::is_sorted(cluster.members.begin(), cluster.members.end()));
            CHECK(std::count(cluster.members.begin(), cluster.members.end(), cluster.head) == 1);
            for (const std::size_t member : cluster.members) {
                ++met[member];
                const double own = away(spots[member], spots[cluster.head]);
                CHECK(own < least);
                for (const SpotCluster &other : clusters)
                    CHECK(own <= away(spots[member], spots[other.head]));
            }
        }
        CHECK(std::all_of(met.begin(), met.end(), [](int times) { return times == 1; }));
    });
}

TEST_CASE("heads are the least distance apart, and the heaviest come first")
{
    forManyMaps([](const std::vector<PaperSpot> &spots, double least) {
        const auto clusters = clustersOf(spots, least);
        for (std::size_t i = 0; i < clusters.size(); ++i) {
            for (std::size_t j = i + 1; j < clusters.size(); ++j)
                CHECK(away(spots[clusters[i].head], spots[clusters[j].head]) >= least);
            if (i > 0)
                CHECK(spots[clusters[i - 1].head].weight >= spots[clusters[i].head].weight);
        }
    });
}

TEST_CASE("gathering the heads again changes nothing")
{
    forManyMaps([](const std::vector<PaperSpot> &spots, double least) {
        std::vector<PaperSpot> heads;
        for (const SpotCluster &cluster : clustersOf(spots, least))
            heads.push_back(spots[cluster.head]);
        const auto again = clustersOf(heads, least);
        REQUIRE(again.size() == heads.size());
        for (std::size_t i = 0; i < again.size(); ++i) {
            CHECK(again[i].head == i);
            CHECK(again[i].members.size() == 1);
        }
    });
}

TEST_CASE("the order in which spots come plays no part")
{
    forManyMaps([](const std::vector<PaperSpot> &spots, double least) {
        std::vector<std::size_t> order(spots.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::shuffle(order.begin(), order.end(), std::mt19937(7));
        std::vector<PaperSpot> mixed;
        for (const std::size_t i : order)
            mixed.push_back(spots[i]);
        const auto one = clustersOf(spots, least);
        const auto other = clustersOf(mixed, least);
        REQUIRE(one.size() == other.size());
        for (std::size_t i = 0; i < one.size(); ++i) {
            // of those at the very same place either may be the head
            CHECK(away(spots[one[i].head], mixed[other[i].head]) == 0.0);
            CHECK(one[i].members.size() == other[i].members.size());
        }
    });
}

TEST_CASE("zoomed in far enough, only what lies at the very same place stays together")
{
    const std::vector<PaperSpot> spots = {{1.0, 1.0, 0}, {1.0, 1.0, 3}, {1.0, 1.5, 0}};
    const auto clusters = clustersOf(spots, 0.4);
    REQUIRE(clusters.size() == 2);
    CHECK(clusters[0].head == 1); // the heavier of the two
    CHECK(clusters[0].members == std::vector<std::size_t>{0, 1});
    CHECK(clusters[1].members == std::vector<std::size_t>{2});
}
