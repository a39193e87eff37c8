// SPDX-License-Identifier: Apache-2.0
// Each rule of a due band, with its edges.
#include <doctest/doctest.h>

#include <algorithm>

#include "due/band.hpp"
#include "story.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

CivilDate day(std::string_view text) { return parseDate(text).value(); }

DueBand bandOf(const Story &story, std::string_view point, LocalTime now)
{
    const auto bands = dueBands(smallCatalogue(), story.history(), now);
    const DueBand *band = findBand(bands, point);
    REQUIRE(band != nullptr);
    return *band;
}

bool hasReason(const DueBand &band, std::string_view slug)
{
    return std::any_of(band.reasons.begin(), band.reasons.end(),
                       [&](const Reason &r) { return r.slug == slug; });
}

Story passedOn(std::string_view date, const std::string &point)
{
    Story story;
    story.mark(story.walk(at(date)), point, MarkState::Pass, at(date));
    return story;
}

} // namespace

TEST_CASE("months alone: likely the catalogue's date, earlier in one case of ten, half as long at most")
{
    const DueBand band = bandOf(passedOn("2026-01-15", "seam"), "seam", at("2026-02-01"));
    // 90 days times exp(-0.6 * 1.2816) = 41.7, with the grid's 0.2 %
    CHECK(band.early >= day("2026-02-25"));
    CHECK(band.early <= day("2026-02-26"));
    CHECK(band.likely == day("2026-04-15"));
    CHECK(band.late == day("2026-05-30")); // and half of 90 days
    CHECK(band.rule == "months");
    CHECK(band.basis == "prior");
    CHECK(band.everLooked);
    CHECK_FALSE(band.dueNow);
    CHECK_FALSE(band.pastDue);
    CHECK_FALSE(band.atDistance);
}

TEST_CASE("data never lengthens a point of the road")
{
    const DueBand band = bandOf(passedOn("2026-01-15", "nut"), "nut", at("2026-02-01"));
    CHECK(band.likely == day("2026-04-15"));
    CHECK(band.late == day("2026-04-15"));
    CHECK(band.basis == "common_practice"); // the catalogue's own limit decides
}

TEST_CASE("a month ends where the shorter month ends, leap years too")
{
    CHECK(bandOf(passedOn("2026-01-31", "shine"), "shine", at("2026-02-01")).likely == day("2026-02-28"));
    CHECK(bandOf(passedOn("2028-01-31", "shine"), "shine", at("2028-02-01")).likely == day("2028-02-29"));
    CHECK(bandOf(passedOn("2028-02-29", "grease"), "grease", at("2028-03-01")).late == day("2029-02-28"));
}

TEST_CASE("a due day is due, and past due only the day after")
{
    const Story story = passedOn("2026-01-15", "seam");
    CHECK_FALSE(bandOf(story, "seam", at("2026-02-24")).dueNow);
    CHECK(bandOf(story, "seam", at("2026-02-26")).dueNow);
    CHECK_FALSE(bandOf(story, "seam", at("2026-05-30")).pastDue);
    CHECK(bandOf(story, "seam", at("2026-05-31")).pastDue);
}

TEST_CASE("the day is that of the place where the look was made")
{
    Story story;
    const LocalTime evening{startOfDay(day("2026-01-15")) + std::chrono::hours(20), ZoneOffset{13 * 60}};
    story.mark(story.walk(evening), "seam", MarkState::Pass, evening); // already the 16th there
    CHECK(bandOf(story, "seam", at("2026-02-01")).likely == day("2026-04-16"));
}

TEST_CASE("re-sealing keeps half the age")
{
    Story story = passedOn("2026-01-01", "seam");
    story.mend(at("2026-01-21"), "reseal", {}, {"seam"});
    // 20 of 90 days old, it restarts at 10: H(t) = H(10/90) + h with shape 1.5 leaves 82 of 90 days
    CHECK(bandOf(story, "seam", at("2026-02-01")).likely <= day("2026-04-15"));
    CHECK(bandOf(story, "seam", at("2026-02-01")).likely >= day("2026-04-11"));
    CHECK(hasReason(bandOf(story, "seam", at("2026-02-01")), "mended"));
}

TEST_CASE("never looked at is due now and says so, but is not past due")
{
    const DueBand band = bandOf(Story(), "seam", at("2026-02-01"));
    CHECK(band.rule == "never_looked");
    CHECK(band.likely == day("2026-02-01"));
    CHECK(band.dueNow);
    CHECK_FALSE(band.pastDue);
    CHECK_FALSE(band.everLooked);
}

TEST_CASE("distance used up says when and is counted down")
{
    Story story = passedOn("2026-01-01", "road");
    story.trip(at("2026-01-10"), at("2026-01-12"), miles(1500));
    const DueBand band = bandOf(story, "road", at("2026-01-20"));
    CHECK(band.rule == "distance");
    CHECK(band.atDistance->si() == doctest::Approx(-miles(500).si()));
    CHECK(band.likely == day("2026-01-11")); // two thirds of two days after noon of the 10th
    CHECK(band.pastDue);
}

TEST_CASE("distance ahead widens into a band, cut off by the months")
{
    const Story story =
        passedOn("2026-01-01", "grease"); // 12 months or 6,000 mi; 10,000 km a year by default
    const DueBand band = bandOf(story, "grease", at("2026-01-01"));
    // 9,656 km at twice 10,000 km a year: 176 days; at the median 353; the months say 365. How long the
    // grease may last makes it sooner still.
    CHECK(band.early < day("2026-06-26"));
    CHECK(band.early > day("2026-03-01"));
    CHECK(band.likely < day("2026-12-19"));
    CHECK(band.likely > day("2026-08-01"));
    CHECK(band.late == day("2027-01-01"));
    CHECK(band.rule == "distance");
    CHECK(band.basis == "prior");
    CHECK(band.alert == band.early);
}

TEST_CASE("a rig that stands leaves the months alone")
{
    Story story = passedOn("2026-01-01", "grease");
    story.rig().yearly = Distance();
    const DueBand band = bandOf(story, "grease", at("2026-01-01"));
    CHECK(band.rule == "months");
    CHECK(band.likely == day("2027-01-01"));
    CHECK(band.late == day("2027-01-01"));
}

TEST_CASE("reasons carry the numbers of their sentences")
{
    Story story = passedOn("2026-01-01", "grease");
    story.trip(at("2026-01-10"), at("2026-01-12"), miles(1500));
    const DueBand band = bandOf(story, "grease", at("2026-02-01"));
    std::vector<Reason> wanted = {{"last_look", "2026-01-01", std::nullopt, Dimension::Count},
                                  {"months", "2026-01-01", 12.0, Dimension::Count},
                                  reasonWith("distance_used", miles(1500)),
                                  reasonWith("usage", kilometres(10'000), "default")};
    CHECK(band.reasons == wanted);
}

TEST_CASE("limits of nothing are left out and reported")
{
    const auto bands = dueBands(smallCatalogue(), passedOn("2026-01-01", "zero").history(), at("2026-02-01"));
    CHECK(findBand(bands, "zero") == nullptr); // no rule is left
    const DueBand band = bandOf(Story(), "zero", at("2026-02-01"));
    CHECK(hasReason(band, "limit_left_out"));
}

TEST_CASE("points of each move carry no date; points of an event alone are not listed once looked at")
{
    const DueBand lap = bandOf(Story(), "lap", at("2026-02-01"));
    CHECK(lap.rule == "every_move");
    CHECK(lap.everyMove);
    CHECK_FALSE(lap.likely);
    const auto bands =
        dueBands(smallCatalogue(), passedOn("2026-01-01", "frost").history(), at("2026-02-01"));
    CHECK(findBand(bands, "frost") == nullptr);
}

TEST_CASE("not fitted is left out until it is looked at again")
{
    Story story;
    story.mark(story.walk(at("2026-01-01")), "seam", MarkState::NotFitted, at("2026-01-01"));
    CHECK(findBand(dueBands(smallCatalogue(), story.history(), at("2026-02-01")), "seam") == nullptr);
    story.mark(story.walk(at("2026-01-05")), "seam", MarkState::Pass, at("2026-01-05"));
    CHECK(bandOf(story, "seam", at("2026-02-01")).likely == day("2026-04-05"));
}

TEST_CASE("could not look moves nothing and is told")
{
    Story story = passedOn("2026-01-01", "seam");
    story.mark(story.walk(at("2026-03-01")), "seam", MarkState::CouldNotLook, at("2026-03-01"));
    const DueBand band = bandOf(story, "seam", at("2026-03-02"));
    CHECK(band.likely == day("2026-04-01"));
    CHECK(hasReason(band, "could_not_look"));
}

TEST_CASE("the alert speaks early for severity I and II, likely for III, late for IV")
{
    CHECK(bandOf(Story(), "nut", at("2026-02-01")).severity == Severity::I);
    CHECK(bandOf(Story(), "seam", at("2026-02-01")).severity == Severity::II);
    CHECK(bandOf(Story(), "latch", at("2026-02-01")).severity == Severity::III);
    CHECK(bandOf(Story(), "shine", at("2026-02-01")).severity == Severity::IV);
}
