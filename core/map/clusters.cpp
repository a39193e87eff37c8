// SPDX-License-Identifier: Apache-2.0
// Choosing heads, then gathering around them.
#include "map/clusters.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <numeric>
#include <utility>

namespace snugwalk {
namespace {

using Cell = std::pair<std::int64_t, std::int64_t>;

class Heads {
public:
    Heads(std::span<const PaperSpot> spots, double least) : m_spots(spots), m_least(least) {}

    void add(std::size_t spot)
    {
        m_cells[cellOf(m_spots[spot])].push_back(m_count++);
        m_heads.push_back(spot);
    }
    /// Number of the nearest head within `least`, the earliest of those alike; `none` without one.
    [[nodiscard]] std::size_t nearest(const PaperSpot &spot) const
    {
        std::size_t best = none;
        double shortest = m_least;
        const Cell middle = cellOf(spot);
        for (std::int64_t i = middle.first - 1; i <= middle.first + 1; ++i) {
            for (std::int64_t j = middle.second - 1; j <= middle.second + 1; ++j) {
                const auto cell = m_cells.find({i, j});
                if (cell == m_cells.end())
                    continue;
                for (const std::size_t number : cell->second) {
                    const PaperSpot &head = m_spots[m_heads[number]];
                    const double away = std::max(std::abs(head.x - spot.x), std::abs(head.y - spot.y));
                    if (away < shortest || (best != none && away == shortest && number < best)) {
                        shortest = away;
                        best = number;
                    }
                }
            }
        }
        return best;
    }
    static constexpr std::size_t none = SIZE_MAX;

private:
    [[nodiscard]] Cell cellOf(const PaperSpot &spot) const
    {
        return {static_cast<std::int64_t>(std::floor(spot.x / m_least)),
                static_cast<std::int64_t>(std::floor(spot.y / m_least))};
    }

    std::span<const PaperSpot> m_spots;
    double m_least;
    std::size_t m_count = 0;
    std::vector<std::size_t> m_heads;
    std::map<Cell, std::vector<std::size_t>> m_cells;
};

} // namespace

std::vector<SpotCluster> clustersOf(std::span<const PaperSpot> spots, double least)
{
    std::vector<std::size_t> order(spots.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const PaperSpot &one = spots[a];
        const PaperSpot &other = spots[b];
        if (one.weight != other.weight)
            return one.weight > other.weight;
        return one.x != other.x ? one.x < other.x : one.y < other.y;
    });
    Heads heads(spots, least);
    std::vector<SpotCluster> clusters;
    for (const std::size_t spot : order) {
        if (heads.nearest(spots[spot]) != Heads::none)
            continue;
        heads.add(spot);
        clusters.push_back({spot, {}});
    }
    for (std::size_t spot = 0; spot < spots.size(); ++spot)
        clusters[heads.nearest(spots[spot])].members.push_back(spot);
    return clusters;
}

} // namespace snugwalk
