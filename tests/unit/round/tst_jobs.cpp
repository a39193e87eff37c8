// SPDX-License-Identifier: Apache-2.0
// Due points gathered into jobs: every point once, in time, and no visit too many.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "round/jobs.hpp"
#include "support/book.hpp"
#include "support/real_catalogue.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const LocalTime now = timeAt("2027-01-10T09:00:00Z");

CivilDate day(std::string_view text) { return parseDate(text).value(); }

// A band that has to be looked at by `by`, last looked at on `looked`.
DueBand band(const std::string &point, std::string_view by, std::string_view looked)
{
    DueBand b;
    b.point = point;
    b.early = b.likely = b.late = b.alert = day(by);
    b.lastLook = day(looked);
    return b;
}

std::vector<std::string> pointsAt(const std::string &stand)
{
    std::vector<std::string> points;
    for (const Point &point : realCatalogue().points()) {
        if (point.stand == stand)
            points.push_back(point.slug);
    }
    return points;
}

} // namespace

TEST_CASE("points of one stand that come up close together are one job, of another stand another")
{
    const auto roof = pointsAt("roof");
    const auto wheels = pointsAt("kerb-wheels");
    REQUIRE(roof.size() >= 2);
    REQUIRE_FALSE(wheels.empty());
    const std::vector<DueBand> bands = {band(roof[0], "2027-06-01", "2026-06-01"),
                                        band(roof[1], "2027-06-20", "2026-06-20"),
                                        band(wheels[0], "2027-06-01", "2026-06-01")};
    const auto jobs = jobsOf(realCatalogue(), bands, now);
    REQUIRE(jobs.size() == 2);
    const Job &first = jobs[0].stand == "roof" ? jobs[0] : jobs[1];
    CHECK(first.points == std::vector<std::string>{roof[0], roof[1]});
    CHECK(first.day == day("2027-06-01"));
    const double minutes = realCatalogue().find(roof[0])->minutes + realCatalogue().find(roof[1])->minutes;
    CHECK(first.minutes == doctest::Approx(minutes));
}

TEST_CASE("a point waits for its own day while three quarters of its time are not over")
{
    const auto roof = pointsAt("roof");
    // looked at yesterday for a year: the visit of next month would be a look wasted
    const std::vector<DueBand> bands = {band(roof[0], "2027-02-10", "2026-02-10"),
                                        band(roof[1], "2028-01-09", "2027-01-09")};
    const auto jobs = jobsOf(realCatalogue(), bands, now);
    REQUIRE(jobs.size() == 2);
    CHECK(jobs[0].day == day("2027-02-10"));
    CHECK(jobs[1].day == day("2028-01-09"));
}

TEST_CASE("what is past belongs to today; what has no date to no job")
{
    const auto roof = pointsAt("roof");
    DueBand eachMove;
    eachMove.point = roof[1];
    eachMove.everyMove = true;
    const auto jobs = jobsOf(realCatalogue(), {band(roof[0], "2026-11-01", "2025-11-01"), eachMove}, now);
    REQUIRE(jobs.size() == 1);
    CHECK(jobs[0].day == day("2027-01-10"));
    CHECK(jobs[0].points == std::vector<std::string>{roof[0]});
    CHECK(jobsOf(realCatalogue(), {eachMove}, now).empty());
}

TEST_CASE("every dated point is in one job, in time, whatever the dates")
{
    std::mt19937 random(20271);
    for (int round = 0; round < 60; ++round) {
        std::vector<DueBand> bands;
        for (const Point &point : realCatalogue().points()) {
            if (random() % 3 != 0)
                continue;
            DueBand b;
            b.point = point.slug;
            b.early = addDays(civilDate(now), static_cast<long long>(random() % 700) - 100);
            b.likely = addDays(*b.early, random() % 100);
            b.late = addDays(*b.likely, random() % 100);
            b.alert = random() % 2 == 0 ? b.early : b.likely;
            if (random() % 4 != 0)
                b.lastLook = addDays(civilDate(now), -static_cast<long long>(random() % 400));
            bands.push_back(b);
        }
        std::size_t placed = 0;
        for (const Job &job : jobsOf(realCatalogue(), bands, now)) {
            placed += job.points.size();
            CHECK(job.day >= civilDate(now));
            for (const std::string &point : job.points) {
                const DueBand &b = *findBand(bands, point);
                CHECK(job.day <= std::max(*b.alert, civilDate(now)));
                CHECK(realCatalogue().find(point)->stand == job.stand);
                CHECK(job.early <= *b.early);
            }
        }
        CHECK(placed == bands.size());
    }
}
