// SPDX-License-Identifier: Apache-2.0
// The coastline: distances and land on invented islands, the poles, the antimeridian, and what it refuses.
// Real: [NATURAL-EARTH]; boxes: [SUTHERLAND-HODGMAN-1974].
#include <cmath>

#include <doctest/doctest.h>

#include "trip/geodesic.hpp"
#include "weather/coast.hpp"
#include "world_bytes.hpp"

using snugwalk::Coast;
using snugwalk::CoastDetail;
using snugwalk::Errc;
using snugwalk::GeoBox;
using snugwalk::GeoPoint;
using snugwalk::MapRing;
using worldbytes::Corners;

namespace {

GeoPoint at(double latitude, double longitude)
{
    GeoPoint point;
    point.latitude = latitude;
    point.longitude = longitude;
    return point;
}

/// Corners from degrees, clockwise from the south-west.
Corners square(double south, double west, double north, double east)
{
    const auto x = [](double longitude) { return static_cast<int>(std::lround((longitude + 180.0) * 2.0)); };
    const auto y = [](double latitude) { return static_cast<int>(std::lround((latitude + 90.0) * 2.0)); };
    return {{x(west), y(south)}, {x(west), y(north)}, {x(east), y(north)}, {x(east), y(south)}};
}

Coast coastOf(const std::vector<Corners> &rings)
{
    auto coast = Coast::fromBytes(worldbytes::coast(rings));
    REQUIRE(coast);
    return std::move(coast).value();
}

double km(const Coast &coast, double latitude, double longitude)
{
    return coast.distanceTo(at(latitude, longitude)).si() / 1000.0;
}

double area(const std::vector<MapRing> &rings)
{
    double sum = 0.0;
    for (const MapRing &ring : rings) {
        double twice = 0.0;
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const auto &a = ring[i];
            const auto &b = ring[(i + 1) % ring.size()];
            twice += a.longitude * b.latitude - b.longitude * a.latitude;
        }
        sum += std::abs(twice) / 2.0;
    }
    return sum;
}

} // namespace

TEST_CASE("the distance is the geodesic to the shore, from land and from sea")
{
    const Coast coast = coastOf({square(-1.0, 9.0, 1.0, 11.0)});
    for (const auto &[latitude, inside] : {std::pair{0.5, true}, {1.5, false}}) {
        CHECK(coast.isLand(at(latitude, 10.0)) == inside);
        const double expected = snugwalk::distanceBetween(at(latitude, 10.0), at(1.0, 10.0)).si() / 1000.0;
        CHECK(km(coast, latitude, 10.0) == doctest::Approx(expected).epsilon(1e-4));
    }
    // beyond a corner the corner is nearest
    const double corner = snugwalk::distanceBetween(at(3.0, 13.0), at(1.0, 11.0)).si() / 1000.0;
    CHECK(km(coast, 3.0, 13.0) == doctest::Approx(corner).epsilon(1e-9));
}

TEST_CASE("an inland sea in a continent is sea with a coast")
{
    const Coast coast = coastOf({square(-40.0, -40.0, 40.0, 40.0), square(-2.0, -2.0, 2.0, 2.0)});
    CHECK(coast.isLand(at(10.0, 10.0)));
    CHECK_FALSE(coast.isLand(at(0.0, 0.0)));
    CHECK(km(coast, 3.0, 0.0) == doctest::Approx(110.6).epsilon(0.01));
}

TEST_CASE("an island over the antimeridian is whole from both sides")
{
    const Coast coast = coastOf({square(10.0, 175.0, 20.0, 185.0)});
    for (const double longitude : {176.0, 179.999, 180.0, -180.0, -179.999, -176.0})
        CHECK(coast.isLand(at(15.0, longitude)));
    CHECK_FALSE(coast.isLand(at(15.0, 174.0)));
    CHECK_FALSE(coast.isLand(at(15.0, -174.0)));
    CHECK(km(coast, 15.0, 180.0) == doctest::Approx(km(coast, 15.0, -180.0)).epsilon(1e-12));
    CHECK(km(coast, 15.0, -174.0) ==
          doctest::Approx(snugwalk::distanceBetween(at(15.0, -174.0), at(15.0, -175.0)).si() / 1000.0)
              .epsilon(1e-3));
    CHECK(area(coast.landWithin({12.0, 178.0, 14.0, 182.0}, CoastDetail::Fine)) == doctest::Approx(8.0));
    CHECK(area(coast.landWithin({12.0, -182.0, 14.0, -178.0}, CoastDetail::Coarse)) == doctest::Approx(8.0));
}

TEST_CASE("an edge along 180 degrees is a cut through land, not a coast")
{
    const Coast coast = coastOf({square(10.0, 170.0, 30.0, 180.0), square(10.0, -180.0, 30.0, -170.0)});
    CHECK(coast.isLand(at(20.0, 180.0)));
    CHECK(coast.isLand(at(20.0, -180.0)));
    CHECK(km(coast, 20.0, 179.9) > 900.0); // to 170 E, to 10 N or to 30 N, not to the cut
}

TEST_CASE("a continent round the South Pole")
{
    Corners ring;
    for (int x = 720; x > 0; x -= 20)
        ring.push_back({x, 40}); // 70 S, westwards
    const Coast coast = coastOf({ring});
    CHECK(coast.isLand(at(-90.0, 0.0)));
    CHECK(coast.isLand(at(-80.0, 123.0)));
    CHECK_FALSE(coast.isLand(at(-60.0, -123.0)));
    CHECK_FALSE(coast.isLand(at(90.0, 0.0)));
    CHECK(km(coast, 90.0, 0.0) == doctest::Approx(17800.0).epsilon(0.01));
    CHECK(area(coast.landWithin({-90.0, -180.0, -60.0, 180.0}, CoastDetail::Fine)) ==
          doctest::Approx(20.0 * 360.0).epsilon(1e-9));
    CHECK(area(coast.landWithin({-85.0, 170.0, -80.0, 190.0}, CoastDetail::Fine)) ==
          doctest::Approx(100.0).epsilon(1e-9));
}

TEST_CASE("a box in the middle of land is full, one at sea is empty")
{
    const Coast coast = coastOf({square(-40.0, -40.0, 40.0, 40.0)});
    CHECK(area(coast.landWithin({-1.0, -1.0, 1.0, 1.0}, CoastDetail::Fine)) == doctest::Approx(4.0));
    CHECK(coast.landWithin({50.0, -1.0, 52.0, 1.0}, CoastDetail::Fine).empty());
    CHECK(area(coast.landWithin({39.0, 39.0, 41.0, 41.0}, CoastDetail::Fine)) == doctest::Approx(1.0));
}

TEST_CASE("no shortened, lengthened or changed head is taken for a coastline")
{
    const std::string whole = worldbytes::coast({square(-1.0, 9.0, 1.0, 11.0)});
    for (std::size_t size = 0; size < whole.size(); ++size) {
        const auto cut = Coast::fromBytes(std::string_view(whole).substr(0, size));
        REQUIRE_FALSE(cut);
        CHECK(cut.error().code == Errc::Corrupt);
        CHECK_FALSE(cut.error().act.empty());
    }
    CHECK_FALSE(Coast::fromBytes(whole + 'x'));
    // 0x7f in any byte of the counts makes them disagree with what follows
    for (std::size_t i = 0; i < 12; ++i) {
        for (const std::size_t start : {std::size_t{8}, std::size_t{12 + 32}}) {
            std::string changed = whole;
            changed[start + i] = static_cast<char>(changed[start + i] ^ 0x7f);
            if (start != 8 || i < 4)
                CHECK_MESSAGE(!Coast::fromBytes(changed), "byte " << start + i);
        }
    }
    CHECK_FALSE(Coast::fromBytes(worldbytes::coast({square(-1.0, 9.0, 95.0, 11.0)})));  // beyond the pole
    CHECK_FALSE(Coast::fromBytes(worldbytes::coast({square(-1.0, 9.0, 1.0, 3000.0)}))); // turns without end
    CHECK_FALSE(Coast::fromBytes(worldbytes::coast({Corners{{0, 0}, {1, 1}}})));        // two corners
    CHECK_FALSE(Coast::fromBytes(worldbytes::coast({})));
}

TEST_CASE("a coastline with changed bytes is refused or answers")
{
    const std::string whole =
        worldbytes::coast({square(-1.0, 9.0, 1.0, 11.0), square(10.0, 175.0, 20.0, 185.0)});
    int refused = 0;
    for (unsigned seed = 0; seed < 3000; ++seed) {
        const auto coast = Coast::fromBytes(worldbytes::mutated(whole, seed));
        if (!coast) {
            ++refused;
            continue;
        }
        REQUIRE(km(*coast, 5.0, 5.0) < 20040.0); // no two places are further apart
        REQUIRE(area(coast->landWithin({-10.0, 170.0, 30.0, 190.0}, CoastDetail::Coarse)) >= 0.0);
        (void)coast->isLand(at(0.0, 10.0));
    }
    CHECK(refused > 100);
    CHECK(refused < 3000);
}

TEST_CASE("the shipped coast knows continents, islands, oceans, lakes and poles")
{
    const auto coast = Coast::fromBytes(worldbytes::real("coast.bin"));
    REQUIRE(coast);
    // places any atlas shows; coordinates rounded to a tenth of a degree, well away from the shore
    for (const auto &place : {std::pair{39.7, -105.0},
                              {48.9, 2.3},
                              {-23.5, 133.9},
                              {55.8, 37.6},
                              {-3.1, -60.0},
                              {19.6, -155.5},
                              {64.5, -18.0},
                              {67.0, 180.0},
                              {67.0, -180.0},
                              {72.0, -40.0},
                              {-90.0, 0.0},
                              {-80.0, 30.0},
                              {43.5, -87.0} /* Lake Michigan: fresh water */})
        CHECK_MESSAGE(coast->isLand(at(place.first, place.second)), place.first << " " << place.second);
    for (const auto &place :
         {std::pair{0.0, -150.0}, {90.0, 0.0}, {40.0, -40.0}, {36.0, 18.0}, {-50.0, 100.0}, {42.0, 50.6}})
        CHECK_MESSAGE(!coast->isLand(at(place.first, place.second)), place.first << " " << place.second);
    CHECK(km(*coast, 43.5, -87.0) > 800.0);
    CHECK(km(*coast, 67.0, 180.0) > 70.0); // Chukotka, over the cut
    CHECK(area(coast->landWithin({-90.0, -180.0, 90.0, 180.0}, CoastDetail::Coarse)) ==
          doctest::Approx(area(coast->landWithin({-90.0, -180.0, 90.0, 180.0}, CoastDetail::Fine)))
              .epsilon(0.02));
}
