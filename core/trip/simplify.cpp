// SPDX-License-Identifier: Apache-2.0
// Douglas-Peucker with a queue in place of recursion: depth costs no stack, and stopping early is fair.
#include "trip/simplify.hpp"

#include <algorithm>
#include <cmath>
#include <queue>

#include "base/contract.hpp"
#include "trip/geodesic.hpp"

namespace snugwalk {
namespace {

/// A stretch between two kept points and its point furthest from the straight line.
struct Stretch {
    std::size_t from;
    std::size_t to;
    std::size_t furthest;
    double deviation; ///< metres
    // Equal deviations are split in track order, so that the result is the same everywhere.
    friend bool operator<(const Stretch &a, const Stretch &b)
    {
        return a.deviation != b.deviation ? a.deviation < b.deviation : a.from > b.from;
    }
};

double deviation(const PlaneOffset &end, const PlaneOffset &point)
{
    const double length2 = end.east * end.east + end.north * end.north;
    double along = 0.0;
    if (length2 > 0.0)
        along = std::clamp((point.east * end.east + point.north * end.north) / length2, 0.0, 1.0);
    return std::hypot(point.east - along * end.east, point.north - along * end.north);
}

Stretch measure(std::span<const GeoPoint> points, std::size_t from, std::size_t to)
{
    const GeoPoint &a = points[from];
    const double middle = (a.latitude + points[to].latitude) / 2.0;
    const PlaneOffset end = planeOffset(a, points[to], middle);
    Stretch stretch{from, to, from, 0.0};
    for (std::size_t i = from + 1; i < to; ++i) {
        const double d = deviation(end, planeOffset(a, points[i], middle));
        // Equal but for rounding: the first one, whatever the processor.
        if (d > stretch.deviation * (1.0 + 1e-9))
            stretch = {from, to, i, d};
    }
    return stretch;
}

} // namespace

std::vector<GeoPoint> simplify(std::span<const GeoPoint> points, Length tolerance, std::size_t atMost)
{
    SNUG_ASSERT(atMost >= 2);
    if (points.size() <= 2)
        return {points.begin(), points.end()};
    std::vector<std::size_t> kept{0, points.size() - 1};
    std::priority_queue<Stretch> open;
    open.push(measure(points, 0, points.size() - 1));
    while (!open.empty() && open.top().deviation > tolerance.si() && kept.size() < atMost) {
        const Stretch widest = open.top();
        open.pop();
        kept.push_back(widest.furthest);
        open.push(measure(points, widest.from, widest.furthest));
        open.push(measure(points, widest.furthest, widest.to));
    }
    std::sort(kept.begin(), kept.end());
    std::vector<GeoPoint> out;
    out.reserve(kept.size());
    for (const std::size_t i : kept)
        out.push_back(points[i]);
    return out;
}

} // namespace snugwalk
