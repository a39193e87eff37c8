// SPDX-License-Identifier: Apache-2.0
// Reading GPX that is cut off, foreign, or made to hurt.
#include <doctest/doctest.h>

#include "track_samples.hpp"
#include "trip/gpx.hpp"

using namespace snugwalk;
using namespace track_samples;

TEST_CASE("a file cut anywhere is refused with line and column")
{
    const std::string whole = readData("two_segments.gpx");
    REQUIRE(whole.size() > 1000);
    const std::size_t last = whole.rfind("</gpx>") + 5;
    for (std::size_t size = 0; size <= last; ++size) {
        const auto track = parseGpx(std::string_view(whole).substr(0, size));
        CAPTURE(size);
        REQUIRE_FALSE(track);
        CHECK(track.error().code == Errc::InvalidInput);
        CHECK(track.error().where.starts_with("line "));
        CHECK(track.error().where.find(", column ") != std::string::npos);
        CHECK_FALSE(track.error().act.empty());
    }
}

TEST_CASE("names the place of a fault, counted from 1")
{
    const auto track = parseGpx("<gpx>\n  <trk></track></gpx>");
    REQUIRE_FALSE(track);
    CHECK(track.error().what == "not well-formed XML: mismatched tag");
    CHECK(track.error().where == "line 2, column 10"); // of the name in the end tag
}

TEST_CASE("what is not GPX is said to be so")
{
    for (const char *text : {"<kml/>", "<html><body/></html>", "<trk><trkseg/></trk>"}) {
        const auto track = parseGpx(text);
        REQUIRE_FALSE(track);
        CHECK(track.error().what == "not a GPX file");
    }
    for (const char *text : {"$GPRMC,1", "\x89PNG\r\n", "{}", "\xff\xfe\x01"})
        CHECK(parseGpx(text).error().code == Errc::InvalidInput);
}

TEST_CASE("entity declarations are refused before they expand")
{
    const auto bomb =
        parseGpx("<!DOCTYPE gpx [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;'>]>"
                 "<gpx><trk><name>&b;&b;&b;&b;</name></trk></gpx>");
    REQUIRE_FALSE(bomb);
    CHECK(bomb.error().what == "GPX with entity declarations is not read");
    CHECK_FALSE(parseGpx("<!DOCTYPE gpx [<!ENTITY f SYSTEM 'file:///etc/hostname'>]><gpx>&f;</gpx>"));
}

TEST_CASE("32 levels are read, 33 are not")
{
    const auto nested = [](int levels) {
        std::string open, close;
        for (int i = 0; i < levels - 1; ++i) { // gpx itself is one
            open += "<x>";
            close += "</x>";
        }
        return parseGpx("<gpx><trk><trkseg><trkpt lat='1' "
                        "lon='1'><time>2026-05-01T10:00:20Z</time></trkpt></trkseg></trk>" +
                        open + close + "</gpx>");
    };
    CHECK(nested(32));
    REQUIRE_FALSE(nested(33));
    CHECK(nested(33).error().code == Errc::OutOfRange);
}

TEST_CASE("over 64 MiB or 5 million points is refused")
{
    CHECK(parseGpx(std::string((64U << 20U) + 1, ' ')).error().code == Errc::OutOfRange);
    std::string many = "<gpx><trk><trkseg>";
    for (int i = 0; i <= 5'000'000; ++i)
        many += "<trkpt/>";
    const auto track = parseGpx(many + "</trkseg></trk></gpx>");
    REQUIRE_FALSE(track);
    CHECK(track.error().code == Errc::OutOfRange);
    CHECK(track.error().what == "over 5 million points in one file");
}

TEST_CASE("a long name is cut between characters")
{
    std::string name;
    for (int i = 0; i < 300; ++i)
        name += "ü";
    const auto track = parseGpx("<gpx><trk><name>" + name +
                                "</name><trkseg><trkpt lat='1' lon='1'><time>2026-05-01T10:00:20Z</time>"
                                "</trkpt></trkseg></trk></gpx>");
    REQUIRE(track);
    CHECK(track->name.size() <= 256);
    CHECK(track->name.size() % 2 == 0);
}
