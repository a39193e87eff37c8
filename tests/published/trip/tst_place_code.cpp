// SPDX-License-Identifier: Apache-2.0
// Codes for cells of the earth: [GEOHASH] (the two examples of its public description) and
// [OPEN-LOCATION-CODE] (rows of its test file encoding.csv), both from memory and worked again apart from
// this code.
#include <cmath>
#include <numbers>

#include <doctest/doctest.h>

#include "trip/place_code.hpp"

using namespace snugwalk;

namespace {

GeoPoint at(double latitude, double longitude) { return {latitude, longitude, std::nullopt, std::nullopt}; }

} // namespace

TEST_CASE("geohashes")
{
    CHECK(geohash(at(57.64911, 10.40744), 11) == "u4pruydqqvj");
    CHECK(geohash(at(42.605, -5.603), 5) == "ezs42");
    CHECK(geohash(at(33.4484, -112.0740)) == "9tbq3"); // worked apart
    for (int length = 1; length < 11; ++length)
        CHECK(std::string("u4pruydqqvj").starts_with(geohash(at(57.64911, 10.40744), length)));
}

TEST_CASE("cells of geohashes: 180 and 360 degrees halved as often as the characters have bits")
{
    CHECK(geohashSpan(4).latitude == 0.17578125);
    CHECK(geohashSpan(4).longitude == 0.3515625);
    CHECK(geohashSpan(5).latitude == 0.0439453125);
    CHECK(geohashSpan(5).longitude == 0.0439453125);
    // 19.5, 4.89 and 0.61 km on a sphere of 6,371 km
    constexpr double kmPerDegree = 6371.0 * std::numbers::pi / 180.0;
    CHECK(std::abs(geohashSpan(4).latitude * kmPerDegree - 19.5) < 0.05);
    CHECK(std::abs(geohashSpan(5).latitude * kmPerDegree - 4.89) < 0.005);
    CHECK(std::abs(geohashSpan(6).latitude * kmPerDegree - 0.61) < 0.005);
}

TEST_CASE("Open Location Codes")
{
    CHECK(openLocationCode(at(20.375, 2.775), 6) == "7FG49Q00+");
    CHECK(openLocationCode(at(47.0000625, 8.0000625), 10) == "8FVC2222+22");
    CHECK(openLocationCode(at(47.365590, 8.524997), 10) == "8FVC9G8F+6X");
    CHECK(openLocationCode(at(33.4484, -112.0740)) == "8559CW00+"); // worked apart
    CHECK(openLocationCode(at(20.5, 2.5), 4) == "7FG40000+");
    CHECK(openLocationCode(at(-89.9999375, -179.9999375), 10) == "22222222+22");
}

TEST_CASE("edges: latitude 90 is in the last cell, longitude 180 is -180")
{
    CHECK(openLocationCode(at(90, 1), 4) == "CFX30000+");
    CHECK(openLocationCode(at(1, 180), 4) == "62H20000+");
    for (const int digits : {2, 4, 6, 8, 10}) {
        CHECK(openLocationCode(at(90, 180), digits) == openLocationCode(at(89.99999, -180), digits));
        CHECK(openLocationCode(at(-90, 180), digits) == openLocationCode(at(-90, -180), digits));
    }
    for (int length = 1; length <= 12; ++length) {
        CHECK(geohash(at(90, 180), length) == geohash(at(std::nextafter(90, 0), -180), length));
        CHECK(geohash(at(-90, 180), length) == std::string(static_cast<std::size_t>(length), '0'));
    }
}
