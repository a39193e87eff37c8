// SPDX-License-Identifier: Apache-2.0
// Reading receivers' logs: signs, dates, checksums, and everything else that stands in them.
#include <cmath>

#include <doctest/doctest.h>

#include "track_samples.hpp"
#include "trip/nmea.hpp"

using namespace snugwalk;
using namespace track_samples;

namespace {

std::string rmc(const std::string &time, const std::string &date, const std::string &lat = "4500.0000,N",
                const std::string &lon = "00700.0000,E")
{
    return sentence("GPRMC," + time + ",A," + lat + "," + lon + ",0.0,0.0," + date + ",,,A");
}

std::string gga(const std::string &time, const std::string &quality = "1", const std::string &talker = "GP")
{
    return sentence(talker + "GGA," + time + ",4500.0000,N,00700.0000,E," + quality +
                    ",08,1.2,410.0,M,48.0,M,,");
}

} // namespace

TEST_CASE("south and west are negative, minutes are sixtieths")
{
    const auto track = parseNmea(rmc("101500.50", "010526", "3355.5000,S", "15112.7500,W"));
    REQUIRE(track);
    CHECK(std::abs(track->fixes[0].point.latitude + 33.925) < 1e-12);
    CHECK(std::abs(track->fixes[0].point.longitude + 151.2125) < 1e-12);
    CHECK(formatInstant(track->fixes[0].time) == "2026-05-01T10:15:00.500Z");
}

TEST_CASE("sentences of one moment make one fix, in either order and from any talker")
{
    for (const std::string &log : {rmc("101500", "010526") + gga("101500.00", "1", "GN"),
                                   gga("101500", "4", "GL") + rmc("101500", "010526")}) {
        const auto track = parseNmea(log);
        REQUIRE(track);
        REQUIRE(track->fixes.size() == 1);
        CHECK(track->fixes[0].point.altitude == 410.0);
        CHECK(track->fixes[0].hdop == 1.2);
        CHECK(track->fixes[0].speed);
        CHECK(formatInstant(track->fixes[0].time) == "2026-05-01T10:15:00Z");
    }
}

TEST_CASE("GGA takes its date from the nearest RMC, over midnight too")
{
    const auto track = parseNmea(gga("235958") + gga("235959") + rmc("000000", "010126") + gga("000001") +
                                 rmc("235959", "010126") + gga("000000"));
    REQUIRE(track);
    REQUIRE(track->fixes.size() == 6);
    CHECK(track->drops.empty());
    CHECK(formatInstant(track->fixes[0].time) == "2025-12-31T23:59:58Z");
    CHECK(formatInstant(track->fixes[3].time) == "2026-01-01T00:00:01Z");
    CHECK(formatInstant(track->fixes[5].time) == "2026-01-02T00:00:00Z");
}

TEST_CASE("bad sentences are counted and cost nothing else")
{
    std::string damaged = rmc("101502", "010526");
    damaged[20] = damaged[20] == '9' ? '8' : '9';
    const std::string log =
        "# a comment\n2026-05-01 10:15:00 > " + rmc("101500", "010526") + damaged + "$GPRMC,101503,A,4500" +
        gga("101504") // cut by the next sentence
        + gga("101505", "0") + sentence("GPRMC,101506,V,,,,,,,,,,N") + sentence("GPGSV,3,1,12,01,40,083,46") +
        sentence("PGRMC,A,218.8,100") + "!AIVDM,1,1,,A,x*00\n" + rmc("101507", "010526", "9500.0000,N") +
        rmc("101508", "010526", "4560.0000,N") + rmc("101509", "320526") +
        sentence("GPRMC,,A,4500.0,N,00700.0,E,,,010526,,") + "$GPGGA,101510," + std::string(1100, '1') +
        "*00\r\n" + std::string("\x00\xb5\x62\xff", 4) + rmc("101511", "010526");
    const auto track = parseNmea(log);
    REQUIRE(track);
    REQUIRE(track->fixes.size() == 3);
    CHECK(formatInstant(track->fixes[2].time) == "2026-05-01T10:15:11Z");
    CHECK(dropped(track->drops, "bad_checksum") == 1);
    CHECK(firstWhere(track->drops, "bad_checksum") == "line 3");
    CHECK(dropped(track->drops, "malformed") == 2);
    CHECK(dropped(track->drops, "no_fix") == 2);
    CHECK(dropped(track->drops, "bad_position") == 2);
    CHECK(dropped(track->drops, "no_time") == 1);
    CHECK(dropped(track->drops, "too_long") == 1);
}

TEST_CASE("over 82 characters are read up to 1024")
{
    const std::string body = "GPRMC,101500,A,4500.0,N,00700.0,E,0,0,010526,,,A,";
    CHECK(parseNmea(sentence(body + std::string(900, '0'))));
    CHECK_FALSE(parseNmea(sentence(body + std::string(1100, '0'))));
}

TEST_CASE("says why a log gives nothing")
{
    CHECK(parseNmea("").error().what == "no RMC or GGA sentence in this log");
    CHECK(parseNmea("$GPGSV,1*00\n").error().code == Errc::InvalidInput);
    const auto undated = parseNmea("\n" + gga("101500") + gga("101501"));
    REQUIRE_FALSE(undated);
    CHECK(undated.error().what == "positions without a date: no RMC sentence has a fix");
    CHECK(undated.error().where == "line 2");
    const auto noFix = parseNmea(sentence("GPRMC,101506,V,,,,,,,,,,N"));
    REQUIRE_FALSE(noFix);
    CHECK(noFix.error().what.find("no_fix") != std::string::npos);
    CHECK_FALSE(noFix.error().act.empty());
}

TEST_CASE("every line of a log counts, however the lines end")
{
    for (const char *end : {"\n", "\r\n", "\r"}) {
        std::string log;
        for (int i = 0; i < 49; ++i) {
            const std::string line = rmc("1015" + std::to_string(10 + i), "010526");
            log += line.substr(0, line.size() - 2) + end;
        }
        const auto track = parseNmea(log);
        REQUIRE(track);
        CHECK(track->fixes.size() == 49);
    }
}

TEST_CASE("recordings put together in the wrong order are sorted, a wild clock is not")
{
    const auto track = parseNmea(rmc("152500", "010526") + rmc("152501", "010526") + rmc("000000", "060180") +
                                 rmc("152502", "010526") + rmc("152503", "010526") + rmc("143300", "010526") +
                                 rmc("143301", "010526"));
    REQUIRE(track);
    REQUIRE(track->fixes.size() == 7);
    CHECK(formatInstant(track->fixes[0].time) == "2026-05-01T14:33:00Z");
    CHECK(formatInstant(track->fixes[2].time) == "2026-05-01T15:25:00Z");
    CHECK(formatInstant(track->fixes[4].time) == "1980-01-06T00:00:00Z"); // left to the sums to drop
}
