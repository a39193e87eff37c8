// SPDX-License-Identifier: Apache-2.0
// Named places: a small file made by hand, damaged ones, and the real one.
#include <fstream>
#include <iterator>
#include <limits>
#include <random>

#include <doctest/doctest.h>

#include "../weather/world_bytes.hpp"
#include "base/text.hpp"
#include "map/gazetteer.hpp"
#include "trip/geodesic.hpp"

using namespace snugwalk;

namespace {

GeoPoint at(double latitude, double longitude) { return {latitude, longitude, std::nullopt, std::nullopt}; }

struct Row {
    int latitude = 0; ///< thousandths of a degree
    int longitude = 0;
    int size = 0;
    int country = 0;
    std::string name;
};

std::string fileOf(const std::vector<Row> &rows)
{
    std::string out = "SNUGPLC1" + worldbytes::u32(rows.size()) + '\x02' + "FRNZ";
    int latitude = 0;
    int longitude = 0;
    for (const Row &row : rows) {
        out += worldbytes::varint(row.latitude - latitude) + worldbytes::varint(row.longitude - longitude);
        out += static_cast<char>(row.size);
        out += static_cast<char>(row.country);
        out += static_cast<char>(row.name.size()) + row.name;
        latitude = row.latitude;
        longitude = row.longitude;
    }
    return out;
}

// Either side of 180 degrees, and one far north.
std::vector<Row> threePlaces()
{
    return {{-17'100, 179'900, 120, 1, "Westbank"},
            {-17'000, -179'800, 150, 1, "Ōstbank"},
            {48'857, 2'352, 211, 0, "Pärnuville"}};
}

const Gazetteer &realPlaces()
{
    static const Gazetteer places = [] {
        std::ifstream file(SNUGWALK_SOURCE_DIR "/core/map/data/places.bin", std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
        return Gazetteer::fromBytes(bytes).value();
    }();
    return places;
}

} // namespace

TEST_CASE("a place is read as it was written, and the nearest is found over 180 degrees")
{
    const auto places = Gazetteer::fromBytes(fileOf(threePlaces()));
    REQUIRE(places);
    REQUIRE(places->count() == 3);
    CHECK(places->at(1).name == "Ōstbank");
    CHECK(places->at(1).country == "NZ");
    CHECK(places->at(1).size == 150);
    CHECK(places->at(1).place == at(-17.0, -179.8));
    const NearPlace near = places->nearest(at(-17.0, 179.95));
    CHECK(near.named.name == "Westbank");
    CHECK(near.distance == distanceBetween(at(-17.1, 179.9), at(-17.0, 179.95)));
    CHECK(near.bearing == doctest::Approx(bearing(at(-17.1, 179.9), at(-17.0, 179.95))));
    CHECK(places->nearest(at(-17.0, -179.81)).named.name == "Ōstbank");
    CHECK(places->nearest(at(90.0, 0.0)).named.name == "Pärnuville");
    const NearPlace same = places->nearest(at(48.857, 2.352));
    CHECK(same.distance == Distance());
    CHECK(same.bearing == 0.0);
}

TEST_CASE("the largest within a box come first, also over 180 degrees")
{
    const auto places = Gazetteer::fromBytes(fileOf(threePlaces()));
    REQUIRE(places);
    const auto found = places->largestWithin({-18.0, 179.0, -16.0, 181.0}, 5);
    REQUIRE(found.size() == 2);
    CHECK(found[0].name == "Ōstbank");
    CHECK(found[1].name == "Westbank");
    CHECK(places->largestWithin({-18.0, 179.0, -16.0, 181.0}, 1).size() == 1);
    CHECK(places->largestWithin({-18.0, 179.0, -16.0, 180.0}, 5).size() == 1);
    CHECK(places->largestWithin({50.0, 0.0, 60.0, 10.0}, 5).empty());
}

TEST_CASE("anything but a whole file is refused, and says where")
{
    const std::string whole = fileOf(threePlaces());
    for (std::size_t size = 0; size < whole.size(); ++size) {
        CAPTURE(size);
        const auto cut = Gazetteer::fromBytes(std::string_view(whole).substr(0, size));
        REQUIRE_FALSE(cut);
        CHECK(cut.error().code == Errc::Corrupt);
        CHECK(cut.error().where.starts_with("places.bin, byte "));
    }
    CHECK_FALSE(Gazetteer::fromBytes(whole + 'x'));
    CHECK_FALSE(Gazetteer::fromBytes(fileOf({})));
    CHECK_FALSE(Gazetteer::fromBytes(fileOf({{90'001, 0, 0, 0, "Over"}})));
    CHECK_FALSE(Gazetteer::fromBytes(fileOf({{0, -180'001, 0, 0, "Round"}})));
    CHECK_FALSE(Gazetteer::fromBytes(fileOf({{0, 0, 0, 2, "Nowhere"}})));
    CHECK_FALSE(Gazetteer::fromBytes(fileOf({{0, 0, 0, 0, ""}})));
    CHECK_FALSE(Gazetteer::fromBytes(fileOf({{10, 0, 0, 0, "North"}, {9, 0, 0, 0, "South"}})));
}

TEST_CASE("a damaged file is refused or read, never past its end")
{
    const std::string whole = fileOf(threePlaces());
    int read = 0;
    for (unsigned seed = 0; seed < 2000; ++seed) {
        const auto places = Gazetteer::fromBytes(worldbytes::mutated(whole, seed));
        if (!places)
            continue;
        ++read;
        CHECK(places->count() >= 1);
        CHECK(isValid(places->nearest(at(10.0, 10.0)).named.place));
    }
    CHECK(read > 0);
}

TEST_CASE("the real places: every name can be read, none lies near a larger one")
{
    const Gazetteer &places = realPlaces();
    CHECK(places.count() > 30'000);
    std::size_t crowded = 0;
    for (std::size_t i = 0; i < places.count(); ++i) {
        const NamedPlace place = places.at(i);
        CHECK(isUtf8(place.name));
        if (i % 97 != 0)
            continue;
        const GeoBox around{place.place.latitude - 0.1, place.place.longitude - 0.1,
                            place.place.latitude + 0.1, place.place.longitude + 0.1};
        for (const NamedPlace &other : places.largestWithin(around, 10)) {
            if (other.place != place.place && distanceBetween(other.place, place.place).si() < 17'800.0)
                ++crowded; // 18 km on a sphere, of coordinates that were rounded afterwards
        }
    }
    CHECK(crowded == 0);
}

TEST_CASE("the nearest of the real places is what looking at all of them finds")
{
    const Gazetteer &places = realPlaces();
    std::mt19937 rng(11);
    std::uniform_real_distribution<double> latitude(-90.0, 90.0);
    std::uniform_real_distribution<double> longitude(-180.0, 180.0);
    for (int i = 0; i < 12; ++i) {
        const GeoPoint here = at(latitude(rng), longitude(rng));
        CAPTURE(here.latitude);
        CAPTURE(here.longitude);
        Distance shortest = Distance::fromSi(std::numeric_limits<double>::infinity());
        for (std::size_t k = 0; k < places.count(); ++k)
            shortest = std::min(shortest, distanceBetween(places.at(k).place, here));
        CHECK(places.nearest(here).distance == shortest);
    }
}
