// SPDX-License-Identifier: Apache-2.0
// What becomes of a finding between two walks, each transition by itself.
#include <doctest/doctest.h>

#include "../due/story.hpp"
#include "compare/compare.hpp"
#include "compare/findings.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Extent length(double mm) { return {Dimension::Length, mm * 1e-3, "mm"}; }
Extent count(double n) { return {Dimension::Count, n, ""}; }

// A finding of grade 3 on the earlier walk; both walks asked for its point.
struct Two {
    Story story;
    Id then;
    Id now;
    Id finding;
    explicit Two(MarkState after = MarkState::Attention)
        : then(story.walk(at("2026-01-01"), "full_round", {"seam"})),
          now(story.walk(at("2026-03-01"), "full_round", {"seam"}))
    {
        story.mark(then, "seam", MarkState::Attention, at("2026-01-01"));
        if (after != MarkState::NotLooked)
            story.mark(now, "seam", after, at("2026-03-01"));
        finding = story.finding(then, "seam", "gap", 3, at("2026-01-01"));
    }
    [[nodiscard]] std::vector<FindingChange> findings() const
    {
        return compareWalks(smallCatalogue(), story.history(), then, now).points.at(0).findings;
    }
    [[nodiscard]] FindingChange only() const
    {
        REQUIRE(findings().size() == 1);
        return findings().front();
    }
};

Photo photo(Story &story, Id look, LocalTime added)
{
    Photo p;
    p.id = story.nextId();
    p.look = look;
    p.added = added;
    return p;
}

} // namespace

TEST_CASE("grade decides first")
{
    for (const auto &[grade, change] : {std::pair{1, Change::Better},
                                        {2, Change::Better},
                                        {3, Change::Same},
                                        {4, Change::Worse},
                                        {5, Change::Worse}}) {
        Two two;
        two.story.look(two.finding, two.now, grade, at("2026-03-01"));
        CHECK(two.only().change == change);
        CHECK(two.only().thenGrade == 3);
        CHECK(two.only().nowGrade == grade);
    }
}

TEST_CASE("extent decides when the grade is equal, beyond 1 mm or a tenth")
{
    const auto change = [](Extent before, Extent after, int grade = 3) {
        Two two;
        two.story.find(two.finding)->looks.front().extent = before;
        two.story.look(two.finding, two.now, grade, at("2026-03-01")).extent = after;
        return two.only().change;
    };
    CHECK(change(length(5), length(6)) == Change::Same); // 1 mm is not beyond
    CHECK(change(length(5), length(6.2)) == Change::Worse);
    CHECK(change(length(5), length(3.8)) == Change::Better);
    CHECK(change(length(100), length(109)) == Change::Same); // a tenth of 100
    CHECK(change(length(100), length(112)) == Change::Worse);
    CHECK(change(count(2), count(3)) == Change::Worse);
    CHECK(change(count(2), count(2)) == Change::Same);
    CHECK(change(length(5), count(50)) == Change::Same);       // nothing to compare
    CHECK(change(length(5), length(50), 2) == Change::Better); // the grade comes first
}

TEST_CASE("mended, waiting or confirmed")
{
    Two two(MarkState::Pass);
    two.story.mend(at("2026-02-01"), "reseal", {two.finding});
    CHECK(two.only().change == Change::Mended);
    CHECK(two.only().reason.empty());
    Two waiting(MarkState::NotLooked);
    waiting.story.mend(at("2026-02-01"), "reseal", {waiting.finding});
    CHECK(waiting.only().change == Change::Mended);
    CHECK(waiting.only().reason == "confirm_pending");
}

TEST_CASE("looked at and not there: gone without a mend, mended with one")
{
    Two two;
    two.story.look(two.finding, two.now, 0, at("2026-03-01"));
    CHECK(two.only().change == Change::Gone);
    two.story.mend(at("2026-02-01"), "reseal", {two.finding});
    CHECK(two.only().change == Change::Mended);
}

TEST_CASE("seen again after a mend: new, and it says that it came back")
{
    Two two;
    two.story.mend(at("2026-02-01"), "reseal", {two.finding});
    two.story.look(two.finding, two.now, 2, at("2026-03-01"));
    CHECK(two.only().change == Change::New);
    CHECK(two.only().reason == "came_back");
    CHECK(two.only().thenGrade == 3);
    CHECK(two.only().nowGrade == 2);
}

TEST_CASE("mended and confirmed before the earlier walk, then back")
{
    Story story;
    const Id first = story.walk(at("2025-06-01"), "full_round", {"seam"});
    const Id finding = story.finding(first, "seam", "gap", 3, at("2025-06-01"));
    story.mend(at("2025-07-01"), "reseal", {finding});
    const Id then = story.walk(at("2026-01-01"), "full_round", {"seam"});
    story.mark(then, "seam", MarkState::Pass, at("2026-01-01"));
    const Id now = story.walk(at("2026-03-01"), "full_round", {"seam"});
    story.mark(now, "seam", MarkState::Attention, at("2026-03-01"));
    const auto unseen = compareWalks(smallCatalogue(), story.history(), then, now).points.at(0).findings;
    CHECK(unseen.empty()); // closed at both ends: nothing to tell
    story.look(finding, now, 2, at("2026-03-01"));
    const auto back = compareWalks(smallCatalogue(), story.history(), then, now).points.at(0);
    REQUIRE(back.findings.size() == 1);
    CHECK(back.findings.front().change == Change::New);
    CHECK(back.findings.front().reason == "came_back");
    CHECK_FALSE(back.findings.front().thenGrade);
    CHECK(back.change == Change::New);
}

TEST_CASE("nobody looked again: not looked at, and still open")
{
    CHECK(Two(MarkState::Attention).only().change == Change::NotLooked);
    CHECK(Two(MarkState::Attention).only().reason.empty());
    CHECK_FALSE(Two(MarkState::Attention).only().nowGrade);
    CHECK(Two(MarkState::Pass).only().reason == "point_passed");
}

TEST_CASE("a look on a walk between tells its grade, but not the change of this walk")
{
    Two two;
    const Id between = two.story.walk(at("2026-02-01"));
    two.story.look(two.finding, between, 5, at("2026-02-01"));
    CHECK(two.only().change == Change::NotLooked);
    CHECK(two.only().nowGrade == 5);
}

TEST_CASE("opened between the walks: new while open, mended or gone when closed again")
{
    Story story;
    const Id then = story.walk(at("2026-01-01"), "full_round", {"seam"});
    story.mark(then, "seam", MarkState::Pass, at("2026-01-01"));
    const Id between = story.walk(at("2026-02-01"));
    const Id finding = story.finding(between, "seam", "gap", 3, at("2026-02-01"));
    const Id now = story.walk(at("2026-03-01"), "full_round", {"seam"});
    story.mark(now, "seam", MarkState::Pass, at("2026-03-01"));
    const auto change = [&] {
        return compareWalks(smallCatalogue(), story.history(), then, now).points.at(0).findings.at(0);
    };
    CHECK(change().change == Change::New);
    CHECK(change().reason == "point_passed");
    CHECK_FALSE(change().thenGrade);
    story.mend(at("2026-02-10"), "reseal", {finding});
    CHECK(change().change == Change::Mended);
    story.look(finding, now, 0, at("2026-03-01"));
    CHECK(change().change == Change::Mended);
}

TEST_CASE("what was opened or mended after the later walk is not told")
{
    Two two;
    two.story.look(two.finding, two.now, 3, at("2026-03-01"));
    two.story.mend(at("2026-03-05"), "replace", {two.finding});
    const Id later = two.story.walk(at("2026-04-01"));
    two.story.finding(later, "seam", "crack", 2, at("2026-04-01"));
    CHECK(two.only().change == Change::Same);
}

TEST_CASE("two findings on one point stay two, in the order they were opened")
{
    Two two;
    const Id second = two.story.finding(two.then, "seam", "crack", 1, at("2026-01-01", 5));
    two.story.look(second, two.now, 2, at("2026-03-01"));
    two.story.look(two.finding, two.now, 2, at("2026-03-01"));
    const auto findings = two.findings();
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].finding == two.finding);
    CHECK(findings[0].change == Change::Better);
    CHECK(findings[1].change == Change::Worse);
}

TEST_CASE("photos in pairs: by the look they prove, loose ones by when they were added")
{
    Two two;
    const Id lookNow = two.story.look(two.finding, two.now, 4, at("2026-03-01")).id;
    const Id lookThen = two.story.find(two.finding)->looks.front().id;
    auto &photos = two.story.find(two.finding)->photos;
    const Photo a = photo(two.story, lookThen, at("2026-03-02")); // copied late, still then
    const Photo b = photo(two.story, lookNow, at("2026-03-01", 1));
    const Photo loose = photo(two.story, Id(), at("2026-01-01", 400));
    const Photo evening = photo(two.story, Id(), at("2026-03-01", 400));
    photos = {evening, b, loose, a};
    CHECK(two.only().thenPhotos == std::vector<Id>{loose.id, a.id});
    CHECK(two.only().nowPhotos == std::vector<Id>{b.id, evening.id});
}
