// SPDX-License-Identifier: Apache-2.0
// The sentences that texts on [NMEA-0183] print as their example, from memory; their checksums are
// part of the example, so a slip of memory would show.
#include <cmath>

#include <doctest/doctest.h>

#include "trip/nmea.hpp"

using namespace snugwalk;

TEST_CASE("the printed RMC and GGA are read to their printed meaning")
{
    const auto track = parseNmea("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\r\n"
                                 "$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A\r\n");
    REQUIRE(track);
    CHECK(track->drops.empty());
    REQUIRE(track->fixes.size() == 1);
    const Fix &fix = track->fixes[0];
    CHECK(formatInstant(fix.time) == "1994-03-23T12:35:19Z");
    CHECK(std::abs(fix.point.latitude - 48.1173) < 1e-9);
    CHECK(std::abs(fix.point.longitude - (11.0 + 31.0 / 60.0)) < 1e-9);
    CHECK(fix.point.altitude == 545.4);
    CHECK(fix.hdop == 0.9);
    REQUIRE(fix.speed);
    // the knot is 1852 m an hour, exactly [NIST-SP811]
    CHECK(std::abs(fix.speed->si() - 22.4 * 1852.0 / 3600.0) < 1e-12);
}
