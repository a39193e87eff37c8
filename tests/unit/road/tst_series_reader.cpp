// SPDX-License-Identifier: Apache-2.0
// Which column is read, and that the other one goes on.
#include <string>
#include <vector>

#include <doctest/doctest.h>

#include "road/series/series_reader.hpp"

using namespace snugwalk;

namespace {

Result<std::vector<SeriesPoint>> readIn(std::string_view text, const std::string &column = "")
{
    std::vector<SeriesPoint> points;
    SeriesReader reader(column, [&](const SeriesPoint &p) {
        points.push_back(p);
        return done();
    });
    SNUG_TRY(reader.feed(text));
    SNUG_TRY(reader.finish());
    return points;
}

} // namespace

TEST_CASE("plain numbers, one a line, with or without a name on top")
{
    for (const char *text : {"1\n2.5\n-3e2\n", "load\n1\n2.5\n-3e2\n"}) {
        const auto points = readIn(text);
        REQUIRE(points);
        REQUIRE(points->size() == 3);
        CHECK((*points)[2].value == -300.0);
        CHECK(!(*points)[2].along);
    }
}

TEST_CASE("of two columns the first may be where along; of more one is named")
{
    const auto two = readIn("distance (m),elevation\n0,5\n0.25,6\n");
    REQUIRE(two);
    CHECK((*two)[1].value == 6.0);
    CHECK((*two)[1].along == 0.25);
    CHECK((*two)[1].line == 3);
    const auto named = readIn("t,a,b\n0,5,7\n1,6,8\n", "b");
    REQUIRE(named);
    CHECK((*named)[1].value == 8.0);
    CHECK((*named)[1].along == 1.0);
    CHECK(!readIn("t,a,b\n0,5,7\n"));
    CHECK(!readIn("a,b\n0,5\n"));
    CHECK(readIn("t,a,b\n0,5,7\n", "c").error().act.find("t, a, b") != std::string::npos);
    CHECK(!readIn("0,5\n1,6\n"));
}

TEST_CASE("faults carry their line")
{
    const auto lineOf = [](std::string_view text) {
        const auto read = readIn(text);
        return read ? std::string("none") : read.error().where;
    };
    CHECK(lineOf("1\n2\nx\n") == "line 3, column 1");
    CHECK(lineOf("1\nnan\n") == "line 2, column 1");
    CHECK(lineOf("1\n1e300\n") == "line 2, column 1");
    CHECK(lineOf("1\n\n2\n") == "line 2");
    CHECK(lineOf("t,a\n0,1\n2,2\n1,3\n") == "line 4");
    CHECK(lineOf("t,a\n0,1\n0,2\n") == "line 3");
    CHECK(lineOf("t,a\n0,1\n1\n") == "line 3");
    CHECK(lineOf("t,a\n0,1\n1,\n") == "line 3, column 2");
    CHECK(lineOf("") == "");
    CHECK(lineOf("load\n") == "");
}
