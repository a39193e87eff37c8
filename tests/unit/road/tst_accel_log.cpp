// SPDX-License-Identifier: Apache-2.0
// Logs as different phones write them, and their faults by line.
#include <cmath>
#include <string>
#include <vector>

#include <doctest/doctest.h>

#include "road/accel/accel_log.hpp"

using namespace snugwalk;

namespace {

struct Log {
    std::vector<AccelSample> samples;
    AccelFacts facts;
};

Result<Log> readIn(std::string_view text, AccelUnit unit = AccelUnit::Unknown)
{
    Log log;
    AccelReader reader(unit, [&](const AccelSample &s) {
        log.samples.push_back(s);
        return done();
    });
    SNUG_TRY(reader.feed(text));
    SNUG_TRY(reader.finish());
    log.facts = reader.facts();
    return log;
}

std::string whereOf(std::string_view text)
{
    const auto log = readIn(text);
    return log ? "none" : log.error().where;
}

} // namespace

TEST_CASE("names and units of headers are understood")
{
    struct Row {
        const char *text;
        double time, z, speed;
    };
    constexpr double g = 9.80665;
    const Row rows[] = {
        {"time,x,y,z\n0,0,0,9.8\n0.5,0,0,9.9\n", 0.5, 9.9, NAN},
        {"timestamp_ms;ax;ay;az\n1000;0;0;9.8\n1010;0;0;9.9\n", 1.01, 9.9, NAN},
        {"Time (ns),Acceleration x (g),Acceleration y (g),Acceleration z (g)\n0,0,0,1\n10000000,0,0,1.5\n",
         0.01, 1.5 * g, NAN},
        {"t,gyro_x,gyro_y,gyro_z,acc_x,acc_y,acc_z,speed (km/h)\n0,9,9,9,0,0,9.8,72\n0.01,9,9,9,0,0,9.9,72\n",
         0.01, 9.9, 20.0},
        {"seconds,accelX_g,accelY_g,accelZ_g,speed\n0,0,0,1,10\n0.01,0,0,1,12\n", 0.01, g, 12.0},
        {"time,x,y,z\n1764000000000,0,0,9.8\n1764000000010,0,0,9.9\n", 1764000000.01, 9.9, NAN},
        {"time,x,y,z\n2026-11-24T08:10:00Z,0,0,9.8\n2026-11-24T08:10:00.010Z,0,0,9.9\n", 1795507800.01, 9.9,
         NAN},
        {"0,0,0,1\n0.01,0,0,1.5\n", 0.01, 1.5 * g, NAN},
    };
    for (const Row &row : rows) {
        CAPTURE(row.text);
        const auto log = readIn(row.text);
        REQUIRE(log);
        REQUIRE(log->samples.size() == 2);
        CHECK(std::abs(log->samples[1].time - row.time) < 1e-6);
        CHECK(std::abs(log->samples[1].a[2] - row.z) < 1e-12);
        CHECK(std::isnan(row.speed) == std::isnan(log->samples[1].speed));
        if (!std::isnan(row.speed))
            CHECK(std::abs(log->samples[1].speed - row.speed) < 1e-12);
    }
}

TEST_CASE("a unit nobody named is told by gravity, and said to be guessed")
{
    const auto g = readIn("time,x,y,z\n0,0,0,1\n0.01,0,0,1\n");
    REQUIRE(g);
    CHECK(g->facts.unitGuessed);
    CHECK(g->facts.unit == AccelUnit::Gravities);
    const auto si = readIn("time,x (m/s2),y (m/s2),z (m/s2)\n0,0,0,9.8\n0.01,0,0,9.8\n");
    REQUIRE(si);
    CHECK(!si->facts.unitGuessed);
    CHECK(std::abs(si->facts.rate - 100.0) < 1e-6);
}

TEST_CASE("gravity that does not show as it should is a wrong unit, or taken off")
{
    CHECK(whereOf("time,x (m/s2),y (m/s2),z (m/s2)\n0,0,0,1\n0.01,0,0,1\n") == "line 2");
    CHECK(whereOf("time,x (g),y (g),z (g)\n0,0,0,9.8\n0.01,0,0,9.8\n") == "line 2");
    CHECK(whereOf("time,x,y,z\n0,0.1,0,0.2\n0.01,0,0,0.1\n") == "line 2");
    CHECK(whereOf("time,x,y,z\n0,0,0,1000\n0.01,0,0,1000\n") == "line 2");
    CHECK(!readIn("time,x,y,z\n0,0,0,9.8\n0.01,0,0,9.8\n", AccelUnit::Gravities));
}

TEST_CASE("equal times are one sample, their mean")
{
    const auto log = readIn("time,x,y,z\n0,0,0,9\n0,3,0,12\n0,0,0,9\n0.01,0,0,9.8\n");
    REQUIRE(log);
    REQUIRE(log->samples.size() == 2);
    CHECK(std::abs(log->samples[0].a[0] - 1.0) < 1e-12);
    CHECK(std::abs(log->samples[0].a[2] - 10.0) < 1e-12);
}

TEST_CASE("a speed told now and then holds for 2 s")
{
    const auto log =
        readIn("time,x,y,z,speed\n0,0,0,9.8,\n1,0,0,9.8,7\n2,0,0,9.8,\n3,0,0,9.8,\n4,0,0,9.8,\n");
    REQUIRE(log);
    CHECK(std::isnan(log->samples[0].speed));
    CHECK(log->samples[1].speed == 7.0);
    CHECK(log->samples[3].speed == 7.0);
    CHECK(std::isnan(log->samples[4].speed));
}

TEST_CASE("faults carry their line")
{
    CHECK(whereOf("time,x,y,z\n0,0,0,9.8\n0.02,0,0,9.8\n0.01,0,0,9.8\n") == "line 4");
    CHECK(whereOf("time,x,y,z\n0,0,0,9.8\n0.02,0,,9.8\n") == "line 3, column 3");
    CHECK(whereOf("time,x,y,z\n0,0,nan,9.8\n") == "line 2, column 3");
    CHECK(whereOf("time,x,y,z\n0,0,0\n") == "line 2");
    CHECK(whereOf("time,x,y\n0,0,0\n") == "line 1");
    CHECK(whereOf("x,y,z\n0,0,0\n") == "line 1");
    CHECK(whereOf("time (h),x,y,z\n0,0,0,1\n") == "line 1, column 1");
    CHECK(whereOf("time,x (ft/s2),y (ft/s2),z (ft/s2)\n0,0,0,1\n") == "line 1, column 2");
    CHECK(whereOf("time,x (g),y (m/s2),z (g)\n0,0,0,1\n") == "line 1, column 3");
    CHECK(whereOf("time,x,y,z,speed\n0,0,0,9.8,-3\n") == "line 2, column 5");
    CHECK(whereOf("time,x,y,z\n0,0,-1e200,9.8\n") == "line 2, column 3");
    CHECK(whereOf("1,2\n") == "line 1");
    CHECK(whereOf("") == "");
}

TEST_CASE("the first gap is told by its line")
{
    const auto log = readIn("time,x,y,z\n0,0,0,9.8\n0.5,0,0,9.8\n1.1,0,0,9.8\n9,0,0,9.8\n");
    REQUIRE(log);
    CHECK(log->facts.firstGapLine == 4);
}
