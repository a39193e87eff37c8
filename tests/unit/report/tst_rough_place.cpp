// SPDX-License-Identifier: Apache-2.0
// What of a place may be told.
#include <doctest/doctest.h>

#include <random>

#include "report/rough_place.hpp"
#include "trip/place_code.hpp"

using namespace snugwalk;

namespace {

std::optional<GeoPoint> spotAt(double latitude, double longitude)
{
    return GeoPoint{latitude, longitude, 12.0, std::nullopt};
}

} // namespace

TEST_CASE("a rough place is in the cell of the place, and every place of a cell comes out alike")
{
    std::mt19937 random(7946);
    std::uniform_real_distribution<double> latitude(-90.0, 90.0);
    std::uniform_real_distribution<double> longitude(-180.0, 180.0);
    for (int i = 0; i < 2000; ++i) {
        const GeoPoint place{latitude(random), longitude(random), std::nullopt, std::nullopt};
        const GeoPoint rough = roughPlace(place);
        CHECK(geohash(rough) == geohash(place)); // by the published cells, see tests/published/trip
        CHECK(roughPlace(rough) == rough);
    }
    for (const GeoPoint &corner : {*spotAt(90.0, 179.9), *spotAt(-90.0, -180.0), *spotAt(90.0, 180.0)})
        CHECK(isValid(roughPlace(corner)));
}

TEST_CASE("no more is told than was asked for, and never a height")
{
    CHECK_FALSE(placeToTell(spotAt(-44.2, 170.1), PlaceDetail::LeftOut));
    CHECK_FALSE(placeToTell(std::nullopt, PlaceDetail::Exact));
    CHECK_FALSE(placeToTell(spotAt(91.0, 0.0), PlaceDetail::Exact));
    CHECK(placeToTell(spotAt(-44.2, 170.1), PlaceDetail::Exact) == GeoPoint{-44.2, 170.1, {}, {}});
    CHECK(placeToTell(spotAt(-44.2, 170.1), PlaceDetail::Coarse) == roughPlace(*spotAt(-44.2, 170.1)));
}

TEST_CASE("how much is told is read back from its name")
{
    for (const PlaceDetail detail : {PlaceDetail::LeftOut, PlaceDetail::Coarse, PlaceDetail::Exact})
        CHECK(parsePlaceDetail(slug(detail)) == detail);
    CHECK_FALSE(parsePlaceDetail("rough"));
}
