// SPDX-License-Identifier: Apache-2.0
// Rows from both ends, then uncrossing.
#include "rig/outline/balloons.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace snugwalk::outline {
namespace {

std::size_t perRow(double width, double side)
{
    return static_cast<std::size_t>(std::max(1.0, std::floor(width / side)));
}

// Which side of the line from a to b a spot lies on.
double sideOf(PaperSpot a, PaperSpot b, PaperSpot p)
{
    return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

double length(PaperSpot a, PaperSpot b) { return std::hypot(a.x - b.x, a.y - b.y); }

// Each as near above its spot as its neighbours allow: pushed right from the left end, then back from the
// right one.
std::vector<double> alongRow(const std::vector<double> &wanted, double width, double side)
{
    std::vector<double> at;
    double least = side / 2;
    for (const double x : wanted) {
        at.push_back(std::max(least, x));
        least = at.back() + side;
    }
    double most = width - side / 2;
    for (std::size_t k = at.size(); k-- > 0;) {
        at[k] = std::min(at[k], most);
        most = at[k] - side;
    }
    return at;
}

void uncross(const std::vector<PaperSpot> &spots, std::vector<PaperSpot> &centres)
{
    for (bool changed = true; changed;) {
        changed = false;
        for (std::size_t i = 0; i < spots.size(); ++i) {
            for (std::size_t k = i + 1; k < spots.size(); ++k) {
                if (!doCross(spots[i], centres[i], spots[k], centres[k]))
                    continue;
                const double now = length(spots[i], centres[i]) + length(spots[k], centres[k]);
                const double then = length(spots[i], centres[k]) + length(spots[k], centres[i]);
                if (then >= now) // by rounding alone: never go round in circles
                    continue;
                std::swap(centres[i], centres[k]);
                changed = true;
            }
        }
    }
}

} // namespace

bool doCross(PaperSpot a, PaperSpot b, PaperSpot c, PaperSpot d)
{
    const double one = sideOf(a, b, c);
    const double two = sideOf(a, b, d);
    const double three = sideOf(c, d, a);
    const double four = sideOf(c, d, b);
    return one * two < 0.0 && three * four < 0.0;
}

int balloonRows(std::size_t count, double width, double side)
{
    const std::size_t each = perRow(width, side);
    return static_cast<int>((count + each - 1) / each);
}

std::vector<PaperSpot> balloonSpots(const std::vector<PaperSpot> &spots, const BalloonBand &band)
{
    std::vector<std::size_t> order(spots.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return spots[a].x < spots[b].x; });
    const auto rows = static_cast<std::size_t>(balloonRows(spots.size(), band.width, band.side));
    std::vector<PaperSpot> centres(spots.size());
    for (std::size_t row = 0; row < rows; ++row) {
        std::vector<std::size_t> mine;
        std::vector<double> wanted;
        for (std::size_t k = row; k < order.size(); k += rows) {
            mine.push_back(order[k]);
            wanted.push_back(spots[order[k]].x);
        }
        const std::vector<double> at = alongRow(wanted, band.width, band.side);
        const double away = (static_cast<double>(row) + 0.5) * band.side;
        for (std::size_t k = 0; k < mine.size(); ++k)
            centres[mine[k]] = {at[k], band.edge + (band.below ? away : -away)};
    }
    uncross(spots, centres);
    return centres;
}

} // namespace snugwalk::outline
