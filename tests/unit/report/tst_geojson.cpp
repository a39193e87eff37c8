// SPDX-License-Identifier: Apache-2.0
// Features by the rules of [RFC7946] (from memory; two other readers are asked in tests/journey).
#include <doctest/doctest.h>

#include "report/geojson.hpp"
#include "support/book.hpp"
#include "support/real_catalogue.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

GeoPoint at(double latitude, double longitude) { return {latitude, longitude, 5.0, std::nullopt}; }

Standing withTrip(const std::vector<GeoPoint> &outline)
{
    Standing standing;
    standing.history.rig = tandem();
    Trip trip;
    trip.id = Id::fromBytes(std::string(16, 't'));
    trip.title = "to the lake";
    trip.start = timeAt("2026-11-01T09:00:00+13:00");
    trip.end = timeAt("2026-11-01T11:00:00+13:00");
    trip.outline = outline;
    standing.history.trips = {trip};
    return standing;
}

Value geometryOf(const Standing &standing, PlaceDetail detail)
{
    const Result<Value> root = parseJson(geoJsonText(standing, realTexts(), detail));
    REQUIRE(root);
    CHECK((*root)["type"].asString() == "FeatureCollection");
    REQUIRE((*root)["features"].list().size() == 1);
    return (*root)["features"].list().front()["geometry"];
}

std::vector<double> numbersIn(const Value &value)
{
    std::vector<double> out;
    if (const auto number = value.asDouble())
        out.push_back(*number);
    for (const Value &item : value.list()) {
        const auto more = numbersIn(item);
        out.insert(out.end(), more.begin(), more.end());
    }
    return out;
}

} // namespace

TEST_CASE("longitude comes first, with seven digits and no height")
{
    const Value line = geometryOf(withTrip({at(-44.123456789, 170.5), at(-44.2, 170.6)}), PlaceDetail::Exact);
    CHECK(line["type"].asString() == "LineString");
    CHECK(numbersIn(line["coordinates"]) == std::vector<double>{170.5, -44.1234568, 170.6, -44.2});
}

TEST_CASE("a line over the 180th meridian is cut there")
{
    const Value line = geometryOf(withTrip({at(-40.0, 179.0), at(-41.0, -179.0)}), PlaceDetail::Exact);
    CHECK(line["type"].asString() == "MultiLineString");
    // half way between 179 E and 179 W, as section 3.1.9 has it
    CHECK(numbersIn(line["coordinates"]) ==
          std::vector<double>{179.0, -40.0, 180.0, -40.5, -180.0, -40.5, -179.0, -41.0});
    const Value back = geometryOf(withTrip({at(0.0, -179.0), at(0.0, 177.0)}), PlaceDetail::Exact);
    CHECK(numbersIn(back["coordinates"]) ==
          std::vector<double>{-179.0, 0.0, -180.0, 0.0, 180.0, 0.0, 177.0, 0.0});
    CHECK(geometryOf(withTrip({at(0.0, 0.0), at(0.0, 90.0)}), PlaceDetail::Exact)["type"].asString() ==
          "LineString");
}

TEST_CASE("what is left out or not known is null, and its title goes with it")
{
    const Standing standing = withTrip({at(-44.12, 170.65), at(-44.9, 170.9)});
    CHECK(geometryOf(standing, PlaceDetail::LeftOut).isNull());
    const std::string text = geoJsonText(standing, realTexts(), PlaceDetail::LeftOut);
    CHECK(text.find("lake") == std::string::npos);
    CHECK(text.find("170.") == std::string::npos);
    CHECK(geometryOf(withTrip({}), PlaceDetail::Exact).isNull());
}

TEST_CASE("a stay is a point, named only where its place is exact")
{
    Standing standing;
    Stay stay;
    stay.id = Id::fromBytes(std::string(16, 's'));
    stay.from = timeAt("2026-11-01T09:00:00+13:00");
    stay.place = at(-44.13, 170.65);
    stay.name = "the willow ground";
    standing.history.stays = {stay};
    CHECK(geometryOf(standing, PlaceDetail::LeftOut).isNull());
    const Value rough = geometryOf(standing, PlaceDetail::Coarse);
    CHECK(rough["type"].asString() == "Point");
    CHECK(numbersIn(rough["coordinates"]) == std::vector<double>{170.66, -44.14});
    CHECK(numbersIn(geometryOf(standing, PlaceDetail::Exact)["coordinates"]) ==
          std::vector<double>{170.65, -44.13});
    for (const PlaceDetail detail : {PlaceDetail::LeftOut, PlaceDetail::Coarse})
        CHECK(geoJsonText(standing, realTexts(), detail).find("willow") == std::string::npos);
    const std::string exact = geoJsonText(standing, realTexts(), PlaceDetail::Exact);
    CHECK(exact.find("willow") != std::string::npos);
    CHECK(exact.find("\"to\":null") != std::string::npos); // still there
}

TEST_CASE("a coarse line goes from cell to cell; one that stays in its cell is a point")
{
    const Value line = geometryOf(withTrip({at(-44.1, 170.65), at(-44.1001, 170.6501), at(-44.9, 170.9)}),
                                  PlaceDetail::Coarse);
    CHECK(line["type"].asString() == "LineString");
    CHECK(numbersIn(line["coordinates"]).size() == 4);
    CHECK(geometryOf(withTrip({at(-44.1, 170.65), at(-44.1001, 170.6501)}), PlaceDetail::Coarse)["type"]
              .asString() == "Point");
}

TEST_CASE("a finding stands where it was seen first, by its look or else by its walk")
{
    Standing standing = withTrip({});
    standing.history.trips.clear();
    WalkRecord record;
    record.walk.id = Id::fromBytes(std::string(16, 'w'));
    record.walk.where = at(10.0, 20.0);
    standing.history.walks = {record};
    FindingHistory finding;
    finding.finding.point = "tread-depth";
    finding.finding.opened = timeAt("2026-11-01T09:00:00+13:00");
    Look look;
    look.walk = record.walk.id;
    finding.looks = {look};
    standing.history.findings = {finding};
    CHECK(numbersIn(geometryOf(standing, PlaceDetail::Exact)["coordinates"]) ==
          std::vector<double>{20.0, 10.0});
    standing.history.findings.front().looks.front().where = at(11.0, 21.0);
    CHECK(numbersIn(geometryOf(standing, PlaceDetail::Exact)["coordinates"]) ==
          std::vector<double>{21.0, 11.0});
}
