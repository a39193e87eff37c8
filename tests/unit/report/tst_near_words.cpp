// SPDX-License-Identifier: Apache-2.0
// Where something is in words, and that rough words tell no more than a rough place.
#include <fstream>
#include <iterator>
#include <random>
#include <set>

#include <doctest/doctest.h>

#include "report/near_words.hpp"
#include "support/real_catalogue.hpp"
#include "trip/place_code.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

GeoPoint at(double latitude, double longitude) { return {latitude, longitude, std::nullopt, std::nullopt}; }

const Gazetteer &places()
{
    static const Gazetteer real = [] {
        std::ifstream file(SNUGWALK_SOURCE_DIR "/core/map/data/places.bin", std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
        return Gazetteer::fromBytes(bytes).value();
    }();
    return real;
}

NearPlace nearBy(double metres, double bearing)
{
    NearPlace near;
    near.named.name = "Twizel";
    near.distance = Distance::fromSi(metres);
    near.bearing = bearing;
    return near;
}

std::string words(double metres, double bearing, PlaceDetail detail, UnitSystem units = UnitSystem::Si)
{
    return nearWords(nearBy(metres, bearing), detail, realTexts(), units);
}

} // namespace

TEST_CASE("distance, direction and name; near it only the name")
{
    CHECK(words(7'200.0, 10.0, PlaceDetail::Exact) == "7\u00a0km north of Twizel");
    CHECK(words(7'200.0, 10.0, PlaceDetail::Exact, UnitSystem::Us) == "4\u00a0mi north of Twizel");
    CHECK(words(23'700.0, 225.0, PlaceDetail::Exact) == "24\u00a0km south-west of Twizel");
    CHECK(words(1'400.0, 225.0, PlaceDetail::Exact) == "near Twizel");
    CHECK(words(1'600.0, 90.0, PlaceDetail::Exact) == "2\u00a0km east of Twizel");
    CHECK(nearWords(nearBy(7'200.0, 10.0), PlaceDetail::Exact, realTexts("es"), UnitSystem::Si,
                    [](double, int) { return std::string("siete"); }) == "siete\u00a0km al norte de Twizel");
}

TEST_CASE("rough words go in steps of five")
{
    CHECK(words(7'200.0, 10.0, PlaceDetail::Coarse) == "about 5\u00a0km north of Twizel");
    CHECK(words(8'000.0, 10.0, PlaceDetail::Coarse) == "about 10\u00a0km north of Twizel");
    CHECK(words(2'400.0, 10.0, PlaceDetail::Coarse) == "near Twizel");
    CHECK(words(13'000.0, 10.0, PlaceDetail::Coarse, UnitSystem::Us) == "about 10\u00a0mi north of Twizel");
}

TEST_CASE("nothing is told of a place that is left out, unknown or no place on earth")
{
    CHECK_FALSE(nearToTell(&places(), at(-44.2, 170.1), PlaceDetail::LeftOut));
    CHECK_FALSE(nearToTell(&places(), std::nullopt, PlaceDetail::Exact));
    CHECK_FALSE(nearToTell(&places(), at(91.0, 0.0), PlaceDetail::Exact));
    CHECK_FALSE(nearToTell(nullptr, at(-44.2, 170.1), PlaceDetail::Exact));
    CHECK(nearWords(std::nullopt, PlaceDetail::Exact, realTexts(), UnitSystem::Si).empty());
}

TEST_CASE("every place of a coarse cell gets the same rough words")
{
    std::mt19937 rng(5);
    std::uniform_real_distribution<double> latitude(-60.0, 70.0);
    std::uniform_real_distribution<double> longitude(-179.0, 179.0);
    const CellSpan span = geohashSpan(roughGeohash);
    std::uniform_real_distribution<double> within(-0.49, 0.49);
    std::size_t exactDiffers = 0;
    for (int i = 0; i < 200; ++i) {
        const GeoPoint some = at(latitude(rng), longitude(rng));
        const GeoPoint middle = roughPlace(some);
        std::set<std::string> rough;
        std::set<std::string> exact;
        for (int k = 0; k < 8; ++k) {
            // the middle is told to two digits, so cells are a little narrower around it
            const GeoPoint place = at(middle.latitude + 0.8 * within(rng) * span.latitude,
                                      middle.longitude + 0.8 * within(rng) * span.longitude);
            rough.insert(nearWords(nearToTell(&places(), place, PlaceDetail::Coarse), PlaceDetail::Coarse,
                                   realTexts(), UnitSystem::Si));
            exact.insert(nearWords(nearToTell(&places(), place, PlaceDetail::Exact), PlaceDetail::Exact,
                                   realTexts(), UnitSystem::Si));
        }
        CHECK(rough.size() == 1);
        exactDiffers += exact.size() > 1 ? 1 : 0;
    }
    CHECK(exactDiffers > 50); // else the test would see nothing
}
