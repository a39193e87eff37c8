// SPDX-License-Identifier: Apache-2.0
// Distance behind, and the three levels of the forecast.
#include <doctest/doctest.h>

#include <cmath>
#include <numeric>

#include "due/usage.hpp"
#include "story.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// Two full years of one 500 km trip in each of June, July and August.
Story summers()
{
    Story story;
    for (const char *year : {"2024", "2025"}) {
        for (const char *month : {"-06-10", "-07-10", "-08-10"})
            story.trip(at(std::string(year) + month), at(std::string(year) + month, 60 * 48),
                       kilometres(500));
    }
    return story;
}

} // namespace

TEST_CASE("a trip under way counts by its share of time")
{
    Story story;
    story.trip(at("2026-01-01"), at("2026-01-05"), kilometres(400));
    const RigHistory history = story.history();
    CHECK(distanceSince(history, at("2025-12-01").instant).si() == doctest::Approx(400e3));
    CHECK(distanceSince(history, at("2026-01-02").instant).si() == doctest::Approx(300e3));
    CHECK(distanceBetween(history, at("2026-01-02").instant, at("2026-01-03").instant).si() ==
          doctest::Approx(100e3));
    CHECK(distanceSince(history, at("2026-02-01").instant) == Distance());
}

TEST_CASE("a trip without length in time counts whole, once")
{
    Story story;
    story.trip(at("2026-01-01"), at("2026-01-01"), kilometres(80));
    const RigHistory history = story.history();
    CHECK(distanceSince(history, at("2025-12-31").instant).si() == doctest::Approx(80e3));
    CHECK(distanceSince(history, at("2026-01-01").instant) == Distance());
}

TEST_CASE("splitting a trip in two files changes nothing")
{
    Story whole;
    whole.trip(at("2026-01-01"), at("2026-01-05"), kilometres(400));
    Story split;
    split.trip(at("2026-01-03"), at("2026-01-05"), kilometres(200));
    split.trip(at("2026-01-01"), at("2026-01-03"), kilometres(200));
    for (const char *date : {"2025-12-31", "2026-01-02", "2026-01-04"})
        CHECK(distanceSince(whole.history(), at(date).instant).si() ==
              doctest::Approx(distanceSince(split.history(), at(date).instant).si()));
}

TEST_CASE("nothing known: 10,000 km a year, known within a factor of two")
{
    const UsageForecast f = forecastUsage(RigHistory(), at("2026-01-01"));
    CHECK(f.level == UsageLevel::Default);
    const CivilDate today = civilDate(at("2026-01-01"));
    const double median = daysToDrive(f, kilometres(1000), today, 0.5).value();
    CHECK(median == doctest::Approx(36.525));
    CHECK(daysToDrive(f, kilometres(1000), today, 0.1).value() == doctest::Approx(median / 2));
    CHECK(daysToDrive(f, kilometres(1000), today, 0.9).value() == doctest::Approx(median * 2));
}

TEST_CASE("the stated distance a year is taken; none at all means no date")
{
    RigHistory history;
    history.rig.yearly = kilometres(20'000);
    CHECK(forecastUsage(history, at("2026-01-01")).level == UsageLevel::Stated);
    history.rig.yearly = Distance();
    const UsageForecast f = forecastUsage(history, at("2026-01-01"));
    CHECK(f.level == UsageLevel::Standing);
    CHECK_FALSE(daysToDrive(f, kilometres(1), civilDate(at("2026-01-01")), 0.5));
}

TEST_CASE("three trips in under a year: their number and length decide, two do not")
{
    Story story;
    story.trip(at("2026-01-01"), at("2026-01-02"), kilometres(300));
    story.trip(at("2026-02-01"), at("2026-02-02"), kilometres(300));
    CHECK(forecastUsage(story.history(), at("2026-04-01")).level == UsageLevel::Default);
    story.trip(at("2026-03-01"), at("2026-03-02"), kilometres(300));
    const UsageForecast f = forecastUsage(story.history(), at("2026-04-01"));
    CHECK(f.level == UsageLevel::Trips);
    CHECK(f.lumps.drift == doctest::Approx(3 * 300e3 / 90.0)); // 90 days of log
    CHECK(f.overshoot.si() == doctest::Approx(150e3));         // equal trips: half a trip
    const double median = daysToDrive(f, kilometres(3000), civilDate(at("2026-04-01")), 0.5).value();
    CHECK(median > 0.85 * 300.0);
    CHECK(median < 1.1 * 315.0);
}

TEST_CASE("a year of log: the owner's own seasons, shrunk to even ones")
{
    const UsageForecast f = forecastUsage(summers().history(), at("2026-06-10"));
    CHECK(f.level == UsageLevel::Season);
    CHECK(f.months == doctest::Approx(24.0).epsilon(0.01));
    CHECK(std::accumulate(f.shares.begin(), f.shares.end(), 0.0) == doctest::Approx(1.0));
    CHECK(f.shares[0] == doctest::Approx(6.0 / (6.0 + f.months) / 12.0));
    CHECK(f.shares[6] > 3.0 / 12.0);
    CHECK(f.yearly.si() > 1.2e6);
    CHECK(f.yearly.si() < 1.6e6);
}

TEST_CASE("the same distance takes longer from autumn than from June")
{
    const UsageForecast f = forecastUsage(summers().history(), at("2026-06-10"));
    const double june = daysToDrive(f, kilometres(500), parseDate("2026-06-10").value(), 0.5).value();
    const double autumn = daysToDrive(f, kilometres(500), parseDate("2026-09-10").value(), 0.5).value();
    CHECK(june < 60.0);
    CHECK(autumn > 150.0);
}

TEST_CASE("early is never after likely, nor likely after late")
{
    for (const Story &story : {Story(), summers()}) {
        const UsageForecast f = forecastUsage(story.history(), at("2026-06-10"));
        double before = 0.0;
        for (const double p : {0.1, 0.5, 0.9}) {
            const double days = daysToDrive(f, kilometres(2000), parseDate("2026-06-10").value(), p).value();
            CHECK(days > before);
            before = days;
        }
    }
}
