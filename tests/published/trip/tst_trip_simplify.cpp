// SPDX-License-Identifier: Apache-2.0
// [DOUGLAS-PEUCKER-1973] on a line of ten points; kept indices computed with an independent program.
#include <algorithm>
#include <random>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "trip/geodesic.hpp"
#include "trip/simplify.hpp"

using namespace snugwalk;

namespace {

// Metres east and north of 0, 0.
GeoPoint metresFromOrigin(double east, double north)
{
    static const PlaneOffset degree = planeOffset({0, 0, {}, {}}, {1, 1, {}, {}}, 0.0);
    return {north / degree.north, east / degree.east, std::nullopt, std::nullopt};
}

std::vector<GeoPoint> line(double scale)
{
    const double xy[][2] = {{0, 0}, {1, .1},  {2, -.1}, {3, 5}, {4, 6},
                            {5, 7}, {6, 8.1}, {7, 9},   {8, 9}, {9, 9}};
    std::vector<GeoPoint> points;
    for (const auto &[x, y] : xy)
        points.push_back(metresFromOrigin(x * scale, y * scale));
    return points;
}

std::vector<std::size_t> keptIndices(const std::vector<GeoPoint> &points, double tolerance,
                                     std::size_t atMost = 500)
{
    std::vector<std::size_t> indices;
    std::size_t next = 0;
    for (const GeoPoint &kept : simplify(points, metres(tolerance), atMost)) {
        while (!(points[next] == kept))
            ++next;
        indices.push_back(next++);
    }
    return indices;
}

using Indices = std::vector<std::size_t>;

} // namespace

TEST_CASE("keeps the published points at each tolerance")
{
    for (const double scale : {1.0, 100.0}) {
        const auto points = line(scale);
        CHECK(keptIndices(points, .05 * scale) == Indices{0, 1, 2, 3, 6, 7, 9});
        CHECK(keptIndices(points, .5 * scale) == Indices{0, 2, 3, 7, 9});
        CHECK(keptIndices(points, 1.0 * scale) == Indices{0, 2, 3, 7, 9});
        CHECK(keptIndices(points, 2.0 * scale) == Indices{0, 9});
    }
}

TEST_CASE("a limit keeps the ends and the widest deviations")
{
    const auto points = line(100.0);
    CHECK(keptIndices(points, 0.0, 2) == Indices{0, 9});
    CHECK(keptIndices(points, 0.0, 3) == Indices{0, 2, 9});
    CHECK(keptIndices(points, 0.0, 10).size() <= 10);
}

TEST_CASE("a loop, doubles, one point and the antimeridian")
{
    const std::vector<GeoPoint> loop{metresFromOrigin(0, 0), metresFromOrigin(50, 0),
                                     metresFromOrigin(50, 50), metresFromOrigin(0, 0)};
    CHECK(keptIndices(loop, 10.0) == Indices{0, 1, 2, 3});
    const std::vector<GeoPoint> doubles(5, metresFromOrigin(3, 4));
    CHECK(simplify(doubles, metres(1), 500).size() == 2);
    CHECK(simplify({}, metres(1), 500).empty());
    CHECK(simplify(std::vector<GeoPoint>{loop[0]}, metres(1), 500).size() == 1);
    // a straight line over 180 degrees
    const std::vector<GeoPoint> far{{0, 179.99, {}, {}}, {0, -179.995, {}, {}}, {0, -179.98, {}, {}}};
    CHECK(simplify(far, metres(1), 500).size() == 2);
}

TEST_CASE("no point left out lies further than the tolerance from the line kept")
{
    std::mt19937 rng(7);
    std::normal_distribution<double> wander(0.0, 40.0);
    std::vector<GeoPoint> points;
    double x = 0.0, y = 0.0;
    for (int i = 0; i < 20'000; ++i)
        points.push_back(metresFromOrigin(x += wander(rng), y += wander(rng)));
    const auto kept = keptIndices(points, 60.0, 20'000);
    REQUIRE(kept.size() < points.size());
    for (std::size_t k = 1; k < kept.size(); ++k) {
        const PlaneOffset end = planeOffset(points[kept[k - 1]], points[kept[k]], 0.0);
        const double length2 = std::max(1e-9, end.east * end.east + end.north * end.north);
        for (std::size_t i = kept[k - 1] + 1; i < kept[k]; ++i) {
            const PlaneOffset p = planeOffset(points[kept[k - 1]], points[i], 0.0);
            const double along = std::clamp((p.east * end.east + p.north * end.north) / length2, 0.0, 1.0);
            REQUIRE(std::hypot(p.east - along * end.east, p.north - along * end.north) < 60.0 * 1.001);
        }
    }
}
