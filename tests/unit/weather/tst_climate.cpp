// SPDX-License-Identifier: Apache-2.0
// The climate table: what it decodes to, where it ends, and what it refuses. Real: [LEGATES-WILLMOTT-1989],
// [CRU-CL2], [COADS], [ETOPO5]; vapor: [KIMBALL-1997], [ALDUCHOV-ESKRIDGE-1996], [FAO-56]; lapse:
// [USSA-1976].
#include <algorithm>
#include <cmath>

#include <doctest/doctest.h>

#include "weather/climate.hpp"
#include "world_bytes.hpp"

using snugwalk::Climate;
using snugwalk::ClimateTable;
using snugwalk::Errc;
using snugwalk::GeoPoint;
using worldbytes::Cell;

namespace {

// 20 °C in July, -10 °C in December, at 450 m; rain 64 and 16 mm; 10 (e - 1) km from the sea
constexpr Cell inland{180, 120, 64, 32, 30, 32, 1};
constexpr Cell shore{180, 120, 64, 32, 15, 0, 0};

GeoPoint at(double latitude, double longitude)
{
    GeoPoint point;
    point.latitude = latitude;
    point.longitude = longitude;
    return point;
}

bool has(const std::vector<std::string> &notes, const std::string &slug)
{
    return std::find(notes.begin(), notes.end(), slug) != notes.end();
}

} // namespace

TEST_CASE("a cell decodes to its units, by the format's own rules")
{
    const auto table = ClimateTable::fromBytes(worldbytes::climate({{{2, 5}, inland}}, 80));
    REQUIRE(table);
    const auto cell = table->at(at(40.0, -70.0)); // the middle of row 2, column 5
    REQUIRE(cell);
    CHECK(cell->elevation == doctest::Approx(450.0));
    CHECK(cell->julyAtSeaLevel == doctest::Approx(20.0 + 0.0065 * 450.0));
    CHECK(cell->decemberAtSeaLevel == doctest::Approx(-10.0 + 0.0065 * 450.0));
    CHECK(cell->julyRain == doctest::Approx(64.0));
    CHECK(cell->decemberRain == doctest::Approx(16.0));
    CHECK(cell->seaDistance == doctest::Approx(10.0 * (std::exp(1.0) - 1.0)));
    CHECK(cell->land);
    CHECK(cell->seaHumidity[0].value() == doctest::Approx(80.0));
}

TEST_CASE("where the table has no cell there is no climate")
{
    const auto climate = Climate::fromBytes(worldbytes::climate({{{2, 5}, inland}}, 80));
    REQUIRE(climate);
    CHECK(climate->normalsAt(at(40.0, -70.0)));
    CHECK_FALSE(climate->normalsAt(at(40.0, -50.0)));
    CHECK_FALSE(climate->normalsAt(at(90.0, 0.0)));
    CHECK_FALSE(climate->normalsAt(at(-90.0, 0.0)));
    CHECK_FALSE(climate->normalsAt(at(NAN, 0.0)));
    CHECK_FALSE(climate->normalsAt(at(0.0, 181.0)));
}

TEST_CASE("between cells the present ones count, over the antimeridian too")
{
    Cell warm = inland;
    warm[0] = 200; // 30 °C
    const auto table = ClimateTable::fromBytes(worldbytes::climate({{{2, 0}, warm}, {{2, 17}, inland}}, 255));
    REQUIRE(table);
    const double lift = 0.0065 * 450.0;
    CHECK(table->at(at(40.0, 180.0))->julyAtSeaLevel == doctest::Approx(25.0 + lift));
    CHECK(table->at(at(40.0, -180.0))->julyAtSeaLevel == doctest::Approx(25.0 + lift));
    CHECK(table->at(at(40.0, 170.0))->julyAtSeaLevel == doctest::Approx(20.0 + lift));
    CHECK(table->at(at(40.0, 161.0))->julyAtSeaLevel == doctest::Approx(20.0 + lift)); // nothing west of it
    CHECK_FALSE(table->at(at(40.0, 170.0))->seaHumidity[3]);
}

TEST_CASE("July and December are the table's, brought to the altitude by 6.5 K/km")
{
    const auto climate = Climate::fromBytes(worldbytes::climate({{{2, 5}, inland}}, 80));
    REQUIRE(climate);
    const auto own = climate->normalsAt(at(40.0, -70.0));
    CHECK(own->elevation == doctest::Approx(450.0));
    CHECK(own->months[6].meanC == doctest::Approx(20.0));
    CHECK(own->months[11].meanC == doctest::Approx(-10.0));
    CHECK(own->months[6].rainMm == doctest::Approx(64.0));
    CHECK(own->landData);
    CHECK(has(own->notes, "estimated"));
    CHECK_FALSE(has(own->notes, "altitude_far"));
    const auto high = climate->normalsAt(at(40.0, -70.0), 2450.0);
    CHECK(high->months[6].meanC == doctest::Approx(20.0 - 13.0));
    CHECK(has(high->notes, "altitude_far"));
}

TEST_CASE("the year turns on 20 July in the north, and by itself half a year later in the south")
{
    Cell south = inland;
    south[0] = 120;
    south[1] = 180;
    const auto climate = Climate::fromBytes(worldbytes::climate({{{2, 5}, inland}, {{6, 5}, south}}, 80));
    REQUIRE(climate);
    const auto north = climate->normalsAt(at(40.0, -70.0))->months;
    const auto under = climate->normalsAt(at(-40.0, -70.0))->months;
    for (std::size_t m = 0; m < 12; ++m) {
        CHECK(north[m].meanC <= north[6].meanC);
        CHECK(north[m].meanC >= north[0].meanC);
        CHECK(under[m].meanC >= under[6].meanC);
        CHECK(under[m].meanC <= under[0].meanC);
    }
}

TEST_CASE("the strip of sea beside land has values and says so")
{
    const auto climate = Climate::fromBytes(worldbytes::climate({{{2, 5}, shore}}, 80));
    REQUIRE(climate);
    const auto normals = climate->normalsAt(at(40.0, -70.0));
    REQUIRE(normals);
    CHECK_FALSE(normals->landData);
    CHECK(has(normals->notes, "sea_cell"));
    for (const auto &month : normals->months)
        CHECK(month.humidityPct == doctest::Approx(80.0)); // at the shore the sea's air alone counts
}

TEST_CASE("drier land the year round has a lower dew point, and never one above the air")
{
    const double humid = snugwalk::inlandDewPoint(10.0, 20.0, 4.0, 1200.0);
    const double arid = snugwalk::inlandDewPoint(10.0, 20.0, 4.0, 150.0);
    CHECK(arid < humid);
    CHECK(humid == doctest::Approx(10.0).epsilon(0.2)); // near the minimum, as FAO-56 has it for wet places
    CHECK(snugwalk::inlandDewPoint(10.0, 20.0, 4.0, 0.0) ==
          doctest::Approx(snugwalk::inlandDewPoint(10.0, 20.0, 4.0, 20.0)));
}

TEST_CASE("no shortened, lengthened or changed head is taken for a table")
{
    const std::string whole = worldbytes::climate({{{2, 5}, inland}, {{2, 9}, inland}}, 80);
    for (std::size_t size = 0; size < whole.size(); ++size) {
        const auto cut = Climate::fromBytes(std::string_view(whole).substr(0, size));
        REQUIRE_FALSE(cut);
        CHECK(cut.error().code == Errc::Corrupt);
        CHECK_FALSE(cut.error().act.empty());
        CHECK(cut.error().where.find("climate.bin") == 0);
    }
    CHECK_FALSE(Climate::fromBytes(whole + '\0'));
    constexpr std::size_t head = 28 + 9 * 2 + 2 * 4; // magic, grids, rows with their two runs
    for (std::size_t i = 0; i < head; ++i) {
        std::string changed = whole;
        changed[i] = static_cast<char>(changed[i] ^ 0x7f);
        // the first column of a run may move within its row; everything else has to fit together
        const bool column = i == 28 + 3 * 2 || i == 28 + 3 * 2 + 4;
        if (!column)
            CHECK_MESSAGE(!Climate::fromBytes(changed), "byte " << i);
    }
}

TEST_CASE("a table with changed bytes is refused or answers within its own bounds")
{
    const std::string whole = worldbytes::climate({{{2, 5}, inland}, {{2, 17}, inland}, {{3, 0}, shore}}, 80);
    int refused = 0;
    for (unsigned seed = 0; seed < 3000; ++seed) {
        const auto climate = Climate::fromBytes(worldbytes::mutated(whole, seed));
        if (!climate) {
            ++refused;
            continue;
        }
        for (double latitude = -85.0; latitude < 90.0; latitude += 10.0) {
            const auto normals = climate->normalsAt(at(latitude, -70.0));
            REQUIRE(
                (!normals || (normals->months[0].meanC > -200.0 && normals->months[0].humidityPct <= 100.0)));
        }
    }
    CHECK(refused > 100);
    CHECK(refused < 3000);
}

TEST_CASE(
    "the shipped table: every land cell gives a year that can be, and the ends are where they should be")
{
    const auto climate = Climate::fromBytes(worldbytes::real("climate.bin"));
    REQUIRE(climate);
    int places = 0;
    for (double latitude = -89.5; latitude < 90.0; latitude += 2.0) {
        for (double longitude = -179.5; longitude < 180.0; longitude += 2.0) {
            const auto normals = climate->normalsAt(at(latitude, longitude));
            if (!normals)
                continue;
            ++places;
            for (const auto &month : normals->months) {
                CHECK(month.lowC < month.meanC);
                CHECK(month.meanC < month.highC);
                CHECK(month.meanC > -75.0);
                CHECK(month.meanC < 45.0);
                CHECK(month.rainMm >= 0.0);
                CHECK(month.humidityPct > 2.0);
                CHECK(month.humidityPct <= 100.0);
            }
        }
    }
    CHECK(places > 4000); // of 16,200: land with its shores
    CHECK_FALSE(climate->normalsAt(at(84.5, -40.0)));
    CHECK_FALSE(climate->normalsAt(at(-78.0, 106.0)));
    CHECK_FALSE(climate->normalsAt(at(0.0, -150.0)));
    const auto west = climate->normalsAt(at(-16.8, 179.9999));
    const auto east = climate->normalsAt(at(-16.8, -179.9999));
    REQUIRE(west);
    REQUIRE(east);
    for (std::size_t m = 0; m < 12; ++m)
        CHECK(std::abs(west->months[m].meanC - east->months[m].meanC) < 0.01);
}
