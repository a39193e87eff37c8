// SPDX-License-Identifier: Apache-2.0
// A reading over all walks: series, resets, crossings, and when nobody can tell.
#include <doctest/doctest.h>

#include <algorithm>

#include "../due/story.hpp"
#include "due/trend/trend.hpp"

using namespace snugwalk;
using namespace snugwalk::test;
using doctest::Approx;

namespace {

constexpr const char *left = "wheel 1L";

// Tread read on full rounds, years apart unless told.
struct Treads {
    Story story;
    Id read(std::string_view date, double mm, const std::string &place = left, const char *unit = "mm")
    {
        const Id walk = story.walk(at(date), "full_round", {"tread"});
        story.mark(walk, "tread", MarkState::Pass, at(date)).readings = {
            {"tread-depth", place, Dimension::Length, mm * 1e-3, unit}};
        return walk;
    }
    [[nodiscard]] std::vector<Trend> all(std::string_view now = "2026-06-01") const
    {
        return trendsOf(smallCatalogue(), story.history(), "tread", at(now));
    }
    [[nodiscard]] Trend only(std::string_view now = "2026-06-01") const
    {
        REQUIRE(all(now).size() == 1);
        return all(now).front();
    }
};

Treads steady()
{
    Treads t;
    t.read("2022-01-01", 8.0);
    t.read("2023-01-01", 7.0);
    t.read("2024-01-01", 6.0);
    t.read("2025-01-01", 5.0);
    t.read("2026-01-01", 4.0);
    return t;
}

} // namespace

TEST_CASE("a line of five: 1 mm a year, 1.6 mm met 2.4 years after 4.0")
{
    const Trend t = steady().only();
    CHECK(t.points.size() == 5);
    CHECK(t.perYearSi.value() == Approx(-1e-3).epsilon(2e-3)); // leap years
    CHECK(t.lowSi == 1.6e-3);
    CHECK(t.basis == "published");
    CHECK(t.note.empty());
    // 1.6 mm is 6.4 years of 365.25 days from the first
    CHECK(std::abs(daysBetween(*t.likely, *parseDate("2028-05-26"))) <= 3);
    REQUIRE((t.early && t.late));
    CHECK(*t.early < *t.likely);
    CHECK(*t.likely < *t.late);
    CHECK(*t.early > *parseDate("2026-06-01")); // 0.25 mm of doubt, not years
    CHECK_FALSE(t.byDistance);
}

TEST_CASE("under three readings there is no line, and no date")
{
    Treads t;
    t.read("2024-01-01", 8.0);
    t.read("2025-01-01", 5.0);
    CHECK(t.only().note == "too_few");
    CHECK_FALSE(t.only().perYearSi);
    CHECK_FALSE(t.only().likely);
    t.read("2026-07-01", 4.0); // after now
    CHECK(t.only().points.size() == 2);
    CHECK(t.only("2026-07-02").points.size() == 3);
}

TEST_CASE("readings that scatter as much as they change determine nothing")
{
    Treads t;
    for (const auto &[date, mm] : {std::pair{"2025-01-01", 6.1}, {"2025-02-01", 5.9}, {"2025-03-01", 6.0}})
        t.read(date, mm);
    CHECK(t.only().note == "not_determined");
    CHECK_FALSE(t.only().likely);
    CHECK(t.only().perYearSi);
}

TEST_CASE("past its limit; not heading for one; none at all; far ahead")
{
    Treads past = steady();
    past.read("2026-05-01", 1.4);
    CHECK(past.only().note == "past_limit");
    Treads up;
    up.read("2023-01-01", 5.0);
    up.read("2024-01-01", 5.3);
    up.read("2025-01-01", 5.6);
    CHECK(up.only().note == "not_toward_limit"); // grown, but each time within doubt
    Treads slow;
    slow.read("1990-01-01", 8.00);
    slow.read("2008-01-01", 6.80);
    slow.read("2026-01-01", 5.60);
    CHECK(slow.only().note == "far_off");
    Story story;
    for (const char *date : {"2023-01-01", "2024-01-01", "2025-01-01"}) {
        const Id walk = story.walk(at(date), "full_round", {"seam"});
        story.mark(walk, "seam", MarkState::Pass, at(date)).readings = {
            {"odd", "", Dimension::Count, date[3] - '0' + 0.0, ""}};
    }
    const auto odd = trendsOf(smallCatalogue(), story.history(), "seam", at("2026-01-01"));
    REQUIRE(odd.size() == 1);
    CHECK(odd.front().note == "no_limit");
    CHECK(odd.front().perYearSi.value() == Approx(1.0).epsilon(2e-3));
}

TEST_CASE("a replacement starts a new series, at its place alone")
{
    Treads t = steady();
    t.read("2026-01-01", 6.0, "wheel 1R");
    const Id walk = t.story.walk(at("2026-01-10"));
    const Id worn = t.story.finding(walk, "tread", "worn", 3, at("2026-01-10"));
    t.story.find(worn)->finding.place.named = left;
    t.story.mend(at("2026-01-20"), "replace", {worn});
    t.read("2026-02-01", 9.0);
    t.read("2026-02-01", 6.0, "wheel 1R");
    const auto trends = t.all();
    REQUIRE(trends.size() == 2);
    CHECK(trends[0].place == left);
    CHECK(trends[0].before.size() == 5);
    CHECK(trends[0].points.size() == 1);
    CHECK(trends[0].note == "too_few");
    CHECK(trends[1].place == "wheel 1R");
    CHECK(trends[1].before.empty());
}

TEST_CASE("a point replaced as a whole; another kind of mend leaves the series alone")
{
    Treads t = steady();
    t.story.mend(at("2026-02-01"), "clean", {}, {"tread"});
    CHECK(t.only().points.size() == 5);
    t.story.mend(at("2026-03-01"), "replace", {}, {"tread"});
    CHECK(t.only().points.empty());
    CHECK(t.only().before.size() == 5);
    CHECK(t.only().note == "too_few");
}

TEST_CASE("grown back without a replacement: asked, and no date until it is answered")
{
    Treads t = steady();
    t.read("2026-03-01", 9.0);
    CHECK(t.only().note == "ask");
    CHECK_FALSE(t.only().likely);
    t.story.mend(at("2026-02-15"), "replace", {}, {"tread"});
    CHECK(t.only().note == "too_few");
    Treads within = steady();
    within.read("2026-03-01", 5.0); // 1.0 mm up is within 3 x 0.354 mm
    CHECK(within.only().note.empty());
}

TEST_CASE("one wild reading is left out of the line and shown; the last is never left out")
{
    Treads t;
    for (const auto &[date, mm] : {std::pair{"2021-01-01", 9.0},
                                   {"2022-01-01", 8.0},
                                   {"2023-01-01", 3.9},
                                   {"2024-01-01", 6.0},
                                   {"2025-01-01", 5.0},
                                   {"2026-01-01", 4.0}})
        t.read(date, mm);
    CHECK(t.only().note.empty()); // the way back from 3.9 to 6.0 is no rise
    CHECK(t.only().points[2].leftOut);
    CHECK(t.only().perYearSi.value() == Approx(-1e-3).epsilon(2e-3));
    Treads last = steady();
    last.read("2026-05-01", 2.0);
    for (const TrendPoint &p : last.only().points)
        CHECK_FALSE(p.leftOut);
}

TEST_CASE("against distance: what is left to drive counts from now")
{
    Treads t = steady();
    for (int year = 2022; year < 2026; ++year) {
        const std::string date = std::to_string(year) + "-06-01";
        t.story.trip(at(date), at(date, 600), kilometres(5000));
    }
    const Trend before = t.only();
    REQUIRE(before.byDistance);
    CHECK(before.points.back().driven.value().si() == Approx(20e6));
    CHECK(before.byDistance->perMetreSi == Approx(-0.2e-9).epsilon(1e-9)); // 1 mm in 5,000 km
    // from 4.0 to 1.6 mm at 5,000 km a millimetre
    CHECK(before.byDistance->likely.value().si() == Approx(12e6).epsilon(1e-9));
    t.story.trip(at("2026-04-01"), at("2026-04-02"), kilometres(2000));
    CHECK(t.only().byDistance->likely.value().si() == Approx(10e6).epsilon(1e-9));
}

TEST_CASE("the order of the history does not matter; two units make one series")
{
    Treads t = steady();
    t.read("2026-04-01", 3.9, left, "in");
    const auto once = t.all();
    RigHistory history = t.story.history();
    std::reverse(history.walks.begin(), history.walks.end());
    CHECK(trendsOf(smallCatalogue(), history, "tread", at("2026-06-01")) == once);
    CHECK(once.size() == 1);
    CHECK(once.front().points.back().unit == "in");
    CHECK(t.story.history().walks.size() == 6);
    CHECK(trendsOf(smallCatalogue(), history, "no-such-point", at("2026-06-01")).empty());
}
