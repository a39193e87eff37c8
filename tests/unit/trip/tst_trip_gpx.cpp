// SPDX-License-Identifier: Apache-2.0
// Reading GPX: what is taken, what is left out and why. Element names and meanings: [GPX-1.1].
#include <doctest/doctest.h>

#include "track_samples.hpp"
#include "trip/gpx.hpp"

using namespace snugwalk;
using namespace track_samples;

namespace {

std::string gpx(const std::string &inside)
{
    return "<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\">" + inside + "</gpx>";
}

std::string point(const std::string &lat, const std::string &lon, const std::string &time)
{
    return "<trkpt lat=\"" + lat + "\" lon=\"" + lon + "\"><time>" + time + "</time></trkpt>";
}

} // namespace

TEST_CASE("takes timed points of all segments and counts the others")
{
    const auto track = parseGpx(readData("two_segments.gpx"));
    REQUIRE(track);
    CHECK(track->name == "Over the ridge & back");
    REQUIRE(track->fixes.size() == 4);
    CHECK(track->fixes[0].point.latitude == 45.0);
    CHECK(track->fixes[0].point.longitude == 7.0);
    CHECK(track->fixes[0].point.altitude == 400.5);
    CHECK(track->fixes[0].hdop == 0.9);
    CHECK(formatInstant(track->fixes[1].time) == "2026-05-01T08:00:10.250Z");
    CHECK_FALSE(track->fixes[1].hdop);
    CHECK(formatInstant(track->fixes[2].time) == "2026-05-01T08:00:30Z"); // +02:00
    CHECK(formatInstant(track->fixes[3].time) == "2026-05-01T08:01:00Z"); // no zone is UTC
    CHECK(dropped(track->drops, "bad_position") == 1);
    CHECK(firstWhere(track->drops, "bad_position") == "line 11");
    CHECK(dropped(track->drops, "no_time") == 1);
    CHECK(dropped(track->drops, "malformed") == 1);
}

TEST_CASE("GPX 1.0 is read alike, with its speed and its prefix")
{
    const auto track =
        parseGpx("<g:gpx version='1.0' xmlns:g='http://www.topografix.com/GPX/1/0'><g:name>old</g:name>"
                 "<g:trk><g:trkseg><g:trkpt lat='-33.5' lon='+151.25'><g:ele>12</g:ele>"
                 "<g:time>2003-05-24T17:09:04Z</g:time><g:speed>3.5</g:speed></g:trkpt>"
                 "<trkpt lat='1' lon='1'><time>2003-05-24T17:09:05Z</time></trkpt>"
                 "</g:trkseg></g:trk></g:gpx>");
    REQUIRE(track);
    CHECK(track->name == "old");
    REQUIRE(track->fixes.size() == 1);
    CHECK(track->fixes[0].point.latitude == -33.5);
    CHECK(track->fixes[0].point.longitude == 151.25);
    REQUIRE(track->fixes[0].speed);
    CHECK(track->fixes[0].speed->si() == 3.5);
}

TEST_CASE("segments written newest first are turned round and sorted")
{
    const auto track =
        parseGpx(gpx("<trk><trkseg>" + point("45", "7", "2026-05-01T10:00:20Z") +
                     point("45.001", "7", "2026-05-01T10:00:10Z") + "</trkseg></trk><trk><trkseg/><trkseg>" +
                     point("45.002", "7", "2026-05-01T09:00:00Z") +
                     point("45.003", "7", "2026-05-01T09:00:10Z") + "</trkseg></trk>"));
    REQUIRE(track);
    REQUIRE(track->fixes.size() == 4);
    for (std::size_t i = 1; i < 4; ++i)
        CHECK(track->fixes[i - 1].time < track->fixes[i].time);
    CHECK(track->fixes[0].point.latitude == 45.002);
    CHECK(track->fixes[3].point.latitude == 45.0);
}

TEST_CASE("a file without times says so and what to do")
{
    const auto track =
        parseGpx(gpx("<trk><trkseg>\n<trkpt lat='1' lon='1'/><trkpt lat='1' lon='2'/></trkseg></trk>"));
    REQUIRE_FALSE(track);
    CHECK(track.error().code == Errc::InvalidInput);
    CHECK(track.error().what == "no point of the track has a time");
    CHECK(track.error().where == "line 2");
    CHECK_FALSE(track.error().act.empty());
}

TEST_CASE("routes and waypoints alone are no journey")
{
    const auto track =
        parseGpx(gpx("<wpt lat='1' lon='1'><time>2026-05-01T10:00:20Z</time></wpt>"
                     "<rte><rtept lat='1' lon='1'><time>2026-05-01T10:00:20Z</time></rtept></rte>"));
    REQUIRE_FALSE(track);
    CHECK(track.error().what == "no track in this GPX file");
}

TEST_CASE("impossible positions are left out, whatever they are")
{
    for (const char *lat : {"90.0001", "-91", "nan", "inf", "", "4 5", "1e999", "45,5"}) {
        CAPTURE(lat);
        const auto track = parseGpx(gpx("<trk><trkseg>" + point(lat, "7", "2026-05-01T10:00:20Z") +
                                        point("45", "7", "2026-05-01T10:00:30Z") + "</trkseg></trk>"));
        REQUIRE(track);
        CHECK(track->fixes.size() == 1);
        CHECK(dropped(track->drops, "bad_position") == 1);
    }
}
