// SPDX-License-Identifier: Apache-2.0
// Trips and stays survive the way into a value tree, its bytes, and back.
#include <limits>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "trip/trip_value.hpp"

using namespace snugwalk;

namespace {

GeoPoint somewhere(double shift) { return {-43.5 + shift, 172.6, 12.5 + shift, metres(4.0)}; }

Trip fullTrip()
{
    Trip trip;
    trip.rig.bytes[15] = 10;
    trip.title = "Over the pass";
    trip.road = RoadClass::Washboard;
    trip.start = {fromMillis(1'777'000'000'123LL), {13 * 60}};
    trip.end = {fromMillis(1'777'009'000'000LL), {12 * 60 + 45}};
    trip.sourceName = "day 3.gpx";
    trip.outline = {{-43.5, 172.6, 12.5, {}}, {-43.6, -179.99, {}, {}}};
    trip.note = "Dust – much of it";
    TrackSummary &s = trip.summary;
    s.length = kilometres(12.25);
    s.inferred = kilometres(1.5);
    s.start = trip.start.instant;
    s.end = trip.end.instant;
    s.first = somewhere(0);
    s.last = somewhere(0.25);
    s.ascent = metres(310);
    s.descent = metres(12);
    s.lowest = metres(-2.5);
    s.highest = metres(307.5);
    s.stops = {{fromMillis(1'777'001'000'000LL), fromMillis(1'777'002'000'000LL), somewhere(0.1)}};
    s.fixesRead = 9000;
    s.fixesKept = 8990;
    s.drops = {{"no_time", 10, "line 7"}};
    s.gaps = 2;
    trip.measured =
        RoadMeasure{kilometres(11.5),         2.25,         6.5, {1.5, 4.25, 30.5}, 1.75, "rig", true, true,
                    {2.0, std::nullopt, 6.5}, kilometres(4)};
    return trip;
}

} // namespace

TEST_CASE("a trip with everything and one with nothing come back equal")
{
    for (const Trip &trip : {fullTrip(), Trip{}}) {
        CHECK(tripFromValue(toValue(trip)) == trip);
        const auto stored = decodeCbor(encodeCbor(toValue(trip)));
        REQUIRE(stored);
        CHECK(tripFromValue(*stored) == trip);
        const auto told = parseJson(toJson(toValue(trip), true));
        REQUIRE(told);
        CHECK(tripFromValue(*told) == trip);
    }
}

TEST_CASE("a trip of an older version has no measure, and half a measure is none")
{
    Value value = toValue(fullTrip());
    value.member("measured") = Value{};
    CHECK(!tripFromValue(value).measured);
    CHECK(toValue(Trip{})["measured"].isNull());
    for (const char *key : {"analysed", "median_roughness", "p90_roughness", "dose"}) {
        Value cut = toValue(fullTrip());
        cut.member("measured").member(key) = Value{};
        CHECK(!tripFromValue(cut).measured);
    }
    Value long_ = toValue(fullTrip());
    long_.member("measured").member("along").member("roughness") = Value::List(alongLimit + 1, Value(1.0));
    REQUIRE(tripFromValue(long_).measured);
    CHECK(tripFromValue(long_).measured->along.empty());
    Value wrong = toValue(fullTrip());
    wrong.member("measured").member("dose").member("4") = -1.0;
    CHECK(!tripFromValue(wrong).measured);
}

TEST_CASE("a stay comes back equal, ended or not")
{
    Stay stay;
    stay.rig.bytes[0] = 255;
    stay.from = {fromMillis(1'777'000'000'000LL), {-7 * 60}};
    stay.place = somewhere(0);
    stay.covered = true;
    stay.name = "Barn";
    CHECK(stayFromValue(toValue(stay)) == stay);
    CHECK(toValue(stay)["to"].isNull());
    stay.to = LocalTime{fromMillis(1'779'000'000'000LL), {-6 * 60}};
    CHECK(stayFromValue(toValue(stay)) == stay);
    CHECK(stayFromValue(Value{}) == Stay{});
}

TEST_CASE("quantities carry their unit, times are RFC 3339, keys are snake_case")
{
    const Value value = toValue(fullTrip());
    CHECK(toJson(value["summary"]["length"], false) == R"({"unit":"m","value":12250.0})");
    CHECK(value["start"] == Value("2026-04-24T16:06:40.123+13:00"));
    CHECK(value["source_name"] == Value("day 3.gpx"));
    CHECK(value["road"] == Value("washboard"));
    CHECK(value["id"].isNull());
    CHECK(value["rig"] == Value("0000000000000000000000000000000a"));
}

TEST_CASE("other units of the dimension are read, foreign ones are not")
{
    Value value = toValue(fullTrip());
    value.member("summary").member("length") = Value::Map{{"value", 3}, {"unit", "km"}};
    value.member("summary").member("inferred") = Value::Map{{"value", 3}, {"unit", "kg"}};
    CHECK(tripFromValue(value).summary.length == kilometres(3));
    CHECK(tripFromValue(value).summary.inferred == kilometres(0));
}

TEST_CASE("what a newer version adds is passed over, what is broken keeps its default")
{
    const double infinite = std::numeric_limits<double>::infinity();
    Value value = toValue(fullTrip());
    value.member("hyperlane") = Value::List{1, 2};
    value.member("road") = "magnetic";
    value.member("end") = "soon";
    value.member("outline") =
        Value::List{Value::List{91, 0}, Value::List{1}, "x", Value::List{1, 2, infinite}};
    value.member("summary").member("first") = Value::Map{{"latitude", infinite}, {"longitude", 0}};
    value.member("summary").member("gaps") = -4;
    value.member("summary").member("stops") = Value::List{Value{}, 7};
    const Trip trip = tripFromValue(value);
    CHECK(trip.title == "Over the pass");
    CHECK(trip.road == RoadClass::Unknown);
    CHECK(trip.end == LocalTime{});
    REQUIRE(trip.outline.size() == 1);
    CHECK_FALSE(trip.outline[0].altitude);
    CHECK_FALSE(trip.summary.first);
    CHECK(trip.summary.gaps == 0);
    CHECK(trip.summary.stops.empty());
    CHECK(tripFromValue(Value{}) == Trip{});
    CHECK(tripFromValue("text") == Trip{});
}

TEST_CASE("an outline never grows over its limit")
{
    Trip trip;
    trip.outline.assign(outlineLimit + 50, GeoPoint{1, 2, {}, {}});
    CHECK(tripFromValue(toValue(trip)).outline.size() == outlineLimit);
}

TEST_CASE("every road class has a name of its own")
{
    for (const RoadClass road : {RoadClass::Unknown, RoadClass::Smooth, RoadClass::Broken, RoadClass::Gravel,
                                 RoadClass::Washboard, RoadClass::Track})
        CHECK(findRoadClass(roadClassName(road)) == road);
    CHECK_FALSE(findRoadClass("Smooth"));
}
