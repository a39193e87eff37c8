// SPDX-License-Identifier: Apache-2.0
// Geodesics against [KARNEY-2013] and the libraries of its author.
#include <cmath>
#include <random>

#include <doctest/doctest.h>

#include "trip/geodesic.hpp"

using namespace snugwalk;

namespace {

struct Row {
    const char *name;
    double lat1, lon1, lat2, lon2;
    double metres;
    double azimuth;
    double azimuthDigits;
};

// JFK-LHR: test file of the Python library geographiclib 2.0, read. GeodTest row 1: test set of
// [KARNEY-2013], from memory, recomputed. All rows: computed with Python geographiclib 2.0, an
// implementation of its own; digits as printed there.
constexpr Row rows[] = {
    {"JFK-LHR", 40.6, -73.8, 51.6, -0.5, 5551759.4003187, 51.198882846, 5e-10},
    {"nearly antipodal", 0, 0, 0.5, 179.5, 19936288.578965, 25.671872868, 5e-10},
    {"GeodTest row 1", 36.530042355041, 0, -48.164270779097768864, 5.762344694676510456, 9398502.0434687,
     176.125875162, 5e-10},
    {"a degree of the equator", 0, 0, 0, 1, 111319.490793274, 90, 5e-10},
    {"the first degree of a meridian", 0, 0, 1, 0, 110574.388557799, 0, 5e-10},
    {"a step of a track", 45, 7, 45, 7.001, 78.846835094, 89.999646447, 5e-10},
    {"across the pole", 89.9999, 0, 89.9999, 180, 22.338795913, 0, 5e-10},
};

GeoPoint at(double latitude, double longitude) { return {latitude, longitude, std::nullopt, std::nullopt}; }

} // namespace

TEST_CASE("distances and bearings are those of the published table")
{
    for (const Row &row : rows) {
        CAPTURE(row.name);
        const GeoPoint a = at(row.lat1, row.lon1);
        const GeoPoint b = at(row.lat2, row.lon2);
        CHECK(std::abs(distanceBetween(a, b).si() - row.metres) < 1e-6);
        CHECK(std::abs(bearing(a, b) - row.azimuth) < row.azimuthDigits);
        CHECK(std::abs(distanceBetween(b, a).si() - row.metres) < 1e-6);
    }
}

TEST_CASE("edges: the same point, the antimeridian, west of north")
{
    CHECK(distanceBetween(at(12, 34), at(12, 34)).si() == 0.0);
    CHECK(bearing(at(12, 34), at(12, 34)) == 0.0);
    // 0.002 degrees of the equator: a thousandth of the table's degree times two
    CHECK(std::abs(distanceBetween(at(0, 179.999), at(0, -179.999)).si() - 222.638981587) < 1e-6);
    CHECK(std::abs(stepBetween(at(0, 179.999), at(0, -179.999)).si() - 222.638981587) < 1e-6);
    CHECK(bearing(at(0, 0), at(0, -1)) == doctest::Approx(270.0).epsilon(1e-12));
    for (double west = 1e-18; west < 1.0; west *= 10.0) {
        CAPTURE(west);
        const double direction = bearing(at(0, 0), at(1, -west));
        CHECK(direction >= 0.0);
        CHECK(direction < 360.0);
    }
}

// Bounds: the plane worked apart against the geodesics of Python geographiclib 2.0, 3000 pairs a distance,
// latitudes to 65 degrees: at most 2.0e-10, 5.8e-11, 5.3e-9 and 5.4e-7 there. The pairs here are others and
// up to 0.4 % longer, where the error grows with the square of the length; 10 m is bounded by rounding of the
// coordinates.
TEST_CASE("the plane for short steps keeps the published accuracy")
{
    std::mt19937 rng(20240601);
    std::uniform_real_distribution<double> latitude(-64.9, 64.9), turn(0.0, 6.283185307179586);
    struct Bound {
        double metres, relative;
    };
    for (const auto &[length, relative] :
         {Bound{10, 2.5e-10}, Bound{100, 5.85e-11}, Bound{1000, 5.45e-9}, Bound{9900, 5.45e-7}}) {
        const double metres = length;
        double worst = 0.0;
        for (int i = 0; i < 3000; ++i) {
            const double lat = latitude(rng);
            const double angle = turn(rng);
            const GeoPoint a = at(lat, 100.0);
            const GeoPoint b =
                at(lat + metres * std::cos(angle) / 111200.0,
                   100.0 + metres * std::sin(angle) / (111200.0 * std::cos(lat * 0.017453292519943295)));
            const double exact = distanceBetween(a, b).si();
            worst = std::max(worst, std::abs(stepBetween(a, b).si() - exact) / exact);
        }
        CAPTURE(metres);
        CHECK(worst < relative);
        CHECK(worst > 0.0);
    }
}

TEST_CASE("beyond the plane's reach the step is the geodesic itself")
{
    for (const auto &[a, b] : {std::pair{at(70, 10), at(70.01, 10.02)}, std::pair{at(40, 0), at(41, 1)},
                               std::pair{at(-90, 0), at(-89.99, 50)}})
        CHECK(stepBetween(a, b) == distanceBetween(a, b));
}
