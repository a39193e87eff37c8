// SPDX-License-Identifier: Apache-2.0
// The examples of [RFC3339] section 5.8.
#include <doctest/doctest.h>

#include "base/time.hpp"

using namespace snugwalk;

namespace {

std::string utcOf(const char *text)
{
    const auto time = parseLocal(text);
    REQUIRE(time);
    return formatInstant(time->instant);
}

} // namespace

TEST_CASE("20 minutes and 50.52 seconds after the 23rd hour of April 12th, 1985 in UTC")
{
    CHECK(utcOf("1985-04-12T23:20:50.52Z") == "1985-04-12T23:20:50.520Z");
}

TEST_CASE("16:39:57 with an offset of -08:00 is 1996-12-20T00:39:57Z in UTC")
{
    CHECK(utcOf("1996-12-19T16:39:57-08:00") == "1996-12-20T00:39:57Z");
    CHECK(formatLocal(*parseLocal("1996-12-19T16:39:57-08:00")) == "1996-12-19T16:39:57-08:00");
}

TEST_CASE("the leap second at the end of 1990 is read as the second before it, in both its forms")
{
    CHECK(utcOf("1990-12-31T23:59:60Z") == "1990-12-31T23:59:59Z");
    CHECK(utcOf("1990-12-31T15:59:60-08:00") == "1990-12-31T23:59:59Z");
}

TEST_CASE("noon, January 1, 1937, Netherlands time, 20 minutes east")
{
    CHECK(utcOf("1937-01-01T12:00:27.87+00:20") == "1937-01-01T11:40:27.870Z");
    CHECK(formatLocal(*parseLocal("1937-01-01T12:00:27.87+00:20")) == "1937-01-01T12:00:27.870+00:20");
}

TEST_CASE("T and Z may be written in lower case, and a space may stand for T")
{
    // Source: [RFC3339] section 5.6, notes
    CHECK(utcOf("1985-04-12t23:20:50z") == "1985-04-12T23:20:50Z");
    CHECK(utcOf("1985-04-12 23:20:50Z") == "1985-04-12T23:20:50Z");
}
