// SPDX-License-Identifier: Apache-2.0
// Names on a map: none over another, none over what is taken, none over the edge.
#include <fstream>
#include <iterator>

#include <doctest/doctest.h>

#include "map/labels.hpp"
#include "map/land.hpp"

using namespace snugwalk;

namespace {

std::string bytesOf(const char *path)
{
    std::ifstream file(std::string(SNUGWALK_SOURCE_DIR "/core/") + path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

const Gazetteer &places()
{
    static const Gazetteer real = Gazetteer::fromBytes(bytesOf("map/data/places.bin")).value();
    return real;
}

} // namespace

TEST_CASE("boxes that only touch do not overlap")
{
    CHECK(overlap({0, 0, 10, 10}, {9, 9, 5, 5}));
    CHECK_FALSE(overlap({0, 0, 10, 10}, {10, 0, 5, 5}));
    CHECK_FALSE(overlap({0, 0, 10, 10}, {0, 10, 5, 5}));
}

TEST_CASE("names of crowded and of empty land keep apart at every scale")
{
    const double paper = 400.0;
    std::size_t most = 0;
    for (const MapPoint &middle : {MapPoint{50.5, 7.0}, MapPoint{-44.0, 170.5}, MapPoint{40.0, -100.0}}) {
        for (const double across : {0.2, 2.0, 10.0, 60.0, 360.0}) {
            CAPTURE(middle.latitude);
            CAPTURE(across);
            const MapFrame frame = MapFrame::looking(middle, across, 0.8);
            const PaperBox spot{176.0, 226.0, 48.0, 48.0};
            const auto labels = placeLabels(places(), frame, paper, {}, {spot});
            most = std::max(most, labels.size());
            CHECK(labels.size() <= LabelStyle{}.atMost);
            for (std::size_t i = 0; i < labels.size(); ++i) {
                const PaperBox &box = labels[i].box;
                CHECK_FALSE(overlap(box, spot));
                CHECK(box.left >= 0.0);
                CHECK(box.top >= 0.0);
                CHECK(box.left + box.width <= paper);
                CHECK(box.top + box.height <= paper / 0.8);
                for (std::size_t j = i + 1; j < labels.size(); ++j)
                    CHECK_FALSE(overlap(box, labels[j].box));
            }
        }
    }
    CHECK(most == LabelStyle{}.atMost);
}

TEST_CASE("the land of a map: sea where there is some, none inland, and its cut edges outside")
{
    const Coast coast = Coast::fromBytes(bytesOf("weather/data/coast.bin")).value();
    const MapFrame shore = MapFrame::looking({-43.5, 172.7}, 2.0, 1.0);
    const MapLand there = landOf(coast, shore, 0.05, 1.0 / 1200);
    CHECK(there.seaInView);
    REQUIRE_FALSE(there.rings.empty());
    bool isCutOutside = true;
    for (const FlatPoint &p : there.rings.front()) {
        const bool onEdge = std::abs(p.x) < 1e-6 || std::abs(p.x - shore.width()) < 1e-6;
        isCutOutside = isCutOutside && !onEdge;
    }
    CHECK(isCutOutside);
    CHECK_FALSE(landOf(coast, MapFrame::looking({40.0, -100.0}, 3.0, 1.0), 0.05, 1.0 / 1200).seaInView);
    // wider than a turn: still a map
    CHECK_FALSE(landOf(coast, MapFrame::looking({0.0, 0.0}, 360.0, 1.0), 0.3, 1.0 / 1200).rings.empty());
}
