// SPDX-License-Identifier: Apache-2.0
// The map: where its spots lie, and what it says without a coast.
#include <doctest/doctest.h>

#include <cmath>
#include <fstream>
#include <iterator>

#include "base/text.hpp"
#include "html/map_svg.hpp"

using namespace snugwalk;

namespace {

GeoPoint at(double latitude, double longitude) { return {latitude, longitude, std::nullopt, std::nullopt}; }

std::string realBytes(const std::string &name)
{
    std::ifstream file(SNUGWALK_SOURCE_DIR "/core/" + name, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

MapSpot spot(int number, GeoPoint place) { return {number, std::nullopt, place, ""}; }

// Where the shape of the n-th spot is put.
std::pair<double, double> placeOf(const std::string &svg, int n)
{
    std::size_t from = 0;
    for (int i = 0; i <= n; ++i)
        from = svg.find("translate(", from) + 10;
    const std::string_view rest = std::string_view(svg).substr(from);
    const auto parts = split(rest.substr(0, rest.find(')')), ' ');
    return {*parseDouble(parts[0]), *parseDouble(parts[1])};
}

} // namespace

TEST_CASE("nothing to show, no map") { CHECK(html::mapSvg({}, {}, "").empty()); }

TEST_CASE("one place stands in the middle")
{
    const std::string svg = html::mapSvg({{}, {spot(1, at(-44.27, 170.10))}, ""}, {}, "spoken <words>");
    const auto [x, y] = placeOf(svg, 0);
    CHECK(x == doctest::Approx(400.0));
    CHECK(y == doctest::Approx(300.0));
    CHECK(svg.find("spoken &lt;words&gt;") != svg.npos);
    CHECK(svg.find("evenodd") == svg.npos); // no coast, no land, no sea
}

TEST_CASE("north is up, east is right, and both have one scale")
{
    // a degree of longitude at 60 degrees is half as long as one of latitude (cos 60 = 0.5)
    const std::string svg = html::mapSvg(
        {{}, {spot(1, at(59.5, 10.0)), spot(2, at(60.5, 10.0)), spot(3, at(60.0, 12.0))}, ""}, {}, "");
    const auto a = placeOf(svg, 0);
    const auto b = placeOf(svg, 1);
    const auto c = placeOf(svg, 2);
    CHECK(b.second < a.second);
    CHECK(c.first > a.first);
    CHECK(std::abs(c.first - a.first) == doctest::Approx(a.second - b.second).epsilon(0.001));
}

TEST_CASE("a line over 180 degrees stays in one piece")
{
    const std::string svg = html::mapSvg({{{at(-17.0, 179.8), at(-17.0, -179.8)}},
                                          {spot(1, at(-17.0, 179.8)), spot(2, at(-17.0, -179.8))},
                                          ""},
                                         {}, "");
    const auto a = placeOf(svg, 0);
    const auto b = placeOf(svg, 1);
    CHECK(b.first > a.first);
    CHECK(b.first < 800.0);
}

TEST_CASE("places are named, none at a spot, and the scale bar is in the person's unit")
{
    const MapBlock block{{}, {spot(1, at(-44.27, 170.10))}, ""};
    const std::string without = html::mapSvg(block, {}, "");
    CHECK(without.find("Twizel") == without.npos);
    CHECK(without.find("\u00a0km</text>") != without.npos);
    const Gazetteer places = Gazetteer::fromBytes(realBytes("map/data/places.bin")).value();
    const std::string named = html::mapSvg(block, {nullptr, &places, UnitSystem::Us}, "");
    CHECK(named.find(">Ōamaru</text>") == named.npos); // 90 km off: outside
    CHECK(named.find("\u00a0mi</text>") != named.npos);
    // Twizel lies under the spot's own shape, 1 km from it; a spot further off leaves it room
    const MapBlock off{{}, {spot(1, at(-44.15, 170.25))}, ""};
    CHECK(html::mapSvg(off, {nullptr, &places, UnitSystem::Si}, "").find(">Twizel</text>") != named.npos);
}

TEST_CASE("spots that would lie over each other share a shape, the worst, and tell all numbers")
{
    const MapBlock block{{},
                         {{1, Call::Watch, at(-44.27, 170.10), ""},
                          {2, Call::Hold, at(-44.27, 170.10), ""},
                          {3, Call::Watch, at(-44.20, 170.30), ""}},
                         ""};
    const std::string svg = html::mapSvg(block, {}, "");
    CHECK(svg.find(">1, 2</text>") != svg.npos);
    CHECK(svg.find(">3</text>") != svg.npos);
    CHECK(svg.find("#D55E00") != svg.npos); // hold
}
