// SPDX-License-Identifier: Apache-2.0
// Frames: where places lie, what is shown, and how long the scale bar is.
#include <cmath>
#include <limits>
#include <numbers>

#include <doctest/doctest.h>

#include "map/compass.hpp"
#include "map/frame.hpp"
#include "map/grid.hpp"
#include "trip/geodesic.hpp"

using namespace snugwalk;

namespace {

GeoPoint at(double latitude, double longitude) { return {latitude, longitude, std::nullopt, std::nullopt}; }

double apart(const FlatPoint &a, const FlatPoint &b) { return std::hypot(a.x - b.x, a.y - b.y); }

} // namespace

TEST_CASE("no place, no frame; one place stands in the middle of the least width")
{
    CHECK_FALSE(MapFrame::around({}, {}));
    const std::vector<GeoPoint> one = {at(-44.27, 170.10)};
    const auto frame = MapFrame::around(one, {2.0, 60.0, 0.12});
    REQUIRE(frame);
    CHECK(frame->width() == doctest::Approx(60.0));
    CHECK(frame->height() == doctest::Approx(30.0));
    CHECK(frame->at(one[0]).x == doctest::Approx(30.0));
    CHECK(frame->at(one[0]).y == doctest::Approx(15.0));
    CHECK(frame->middle().latitude == doctest::Approx(-44.27));
}

TEST_CASE("kilometres are those of the ground near the middle parallel")
{
    // the ground by [KARNEY-2013] through distanceBetween; a sphere of 6371 km is up to 0.5 % off
    for (const double latitude : {-70.0, -45.0, 0.0, 30.0, 60.0}) {
        CAPTURE(latitude);
        const MapFrame frame = MapFrame::looking({latitude, 10.0}, 0.5, 1.0);
        const GeoPoint middle = at(latitude, 10.0);
        for (const GeoPoint &other :
             {at(latitude + 0.05, 10.0), at(latitude, 10.1), at(latitude - 0.03, 9.9)})
            CHECK(apart(frame.at(middle), frame.at(other)) ==
                  doctest::Approx(distanceBetween(middle, other).si() / 1000.0).epsilon(0.008));
    }
    // what the docstring says of 200 km from the middle at 45 degrees
    const MapFrame wide = MapFrame::looking({45.0, 10.0}, 6.0, 1.0);
    const double drawn = apart(wide.at(at(46.8, 10.0)), wide.at(at(46.8, 10.1)));
    const double ground = distanceBetween(at(46.8, 10.0), at(46.8, 10.1)).si() / 1000.0;
    CHECK(drawn / ground > 1.01);
    CHECK(drawn / ground < 1.04);
}

TEST_CASE("the projection is undone to where it came from")
{
    const MapFrame frame = MapFrame::looking({-41.0, 179.0}, 20.0, 1.5);
    for (const GeoPoint &place : {at(-41.0, 179.0), at(-35.5, 172.2), at(-46.1, -172.0)}) {
        const MapPoint back = frame.placeAt(frame.at(place));
        CHECK(back.latitude == doctest::Approx(place.latitude));
        CHECK(unwrapLongitude(back.longitude, place.longitude) == doctest::Approx(place.longitude));
    }
    CHECK(frame.degreesAcross() == doctest::Approx(20.0));
}

TEST_CASE("what crosses 180 degrees stays together, and its box goes on counting")
{
    const std::vector<GeoPoint> places = {at(-17.0, 179.8), at(-17.5, -179.8)};
    const auto frame = MapFrame::around(places, {});
    REQUIRE(frame);
    CHECK(frame->width() < 120.0);
    CHECK(frame->at(places[0]).x < frame->at(places[1]).x);
    const GeoBox box = frame->box();
    CHECK(box.west < 179.8);
    CHECK(box.east > 180.2);
    CHECK(frame->box(0.1).west < box.west);
}

TEST_CASE("the whole world is one turn wide, and poles lie on its edge")
{
    const MapFrame world = MapFrame::looking({0.0, 0.0}, 1000.0, 1.0);
    CHECK(world.degreesAcross() == doctest::Approx(360.0));
    const GeoBox box = world.box(0.3);
    CHECK(box.east - box.west <= 360.0 + 1e-9);
    CHECK(std::isfinite(world.at(at(90.0, 0.0)).y));
    CHECK(world.at(at(90.0, 0.0)).y == doctest::Approx(world.at(at(85.0, 0.0)).y));
}

TEST_CASE("degrees are round, few, and on one turn")
{
    for (const double across : {0.02, 0.3, 2.5, 17.0, 200.0}) {
        CAPTURE(across);
        const MapFrame frame = MapFrame::looking({-17.0, 179.9}, across, 1.3);
        int meridians = 0;
        for (const GridLine &line : gridOf(frame)) {
            meridians += line.meridian ? 1 : 0;
            CHECK(line.at >= 0.0);
            CHECK(line.at <= (line.meridian ? frame.width() : frame.height()));
            CHECK(std::abs(line.degrees) <= 180.0);
            const double steps = line.degrees * std::pow(10.0, line.decimals);
            CHECK(std::abs(steps - std::round(steps)) < 1e-6);
        }
        CHECK(meridians >= 1);
        CHECK(meridians <= 5);
    }
}

TEST_CASE("a scale bar is 1, 2 or 5 of its unit and no longer than asked")
{
    CHECK(scaleLength(60.0, 1.0) == 50.0);
    CHECK(scaleLength(49.9, 1.0) == doctest::Approx(20.0));
    CHECK(scaleLength(60.0, 1.609344) == doctest::Approx(20.0)); // miles: 32 km
    CHECK(scaleLength(0.01, 1.0) == doctest::Approx(0.1));
}

TEST_CASE("eight directions, each the nearest")
{
    CHECK(compassPoint(0.0) == "n");
    CHECK(compassPoint(22.4) == "n");
    CHECK(compassPoint(22.6) == "ne");
    CHECK(compassPoint(90.0) == "e");
    CHECK(compassPoint(200.0) == "s");
    CHECK(compassPoint(225.0) == "sw");
    CHECK(compassPoint(337.4) == "nw");
    CHECK(compassPoint(337.6) == "n");
    CHECK(compassPoint(359.9) == "n");
    CHECK(compassPoint(-45.0) == "nw");
}
