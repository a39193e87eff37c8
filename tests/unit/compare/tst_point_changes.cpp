// SPDX-License-Identifier: Apache-2.0
// What becomes of a point between two walks, each transition by itself.
#include <doctest/doctest.h>

#include "../due/story.hpp"
#include "compare/compare.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr auto pass = MarkState::Pass;
constexpr auto attention = MarkState::Attention;
constexpr auto notFitted = MarkState::NotFitted;
constexpr auto couldNot = MarkState::CouldNotLook;
constexpr auto notLooked = MarkState::NotLooked;

struct Two {
    Story story;
    Id then;
    Id now;
    Two()
        : then(story.walk(at("2026-01-01"), "full_round", {"seam"})),
          now(story.walk(at("2026-03-01"), "full_round", {"seam"}))
    {}

    void marks(MarkState before, MarkState after)
    {
        if (before != notLooked)
            story.mark(then, "seam", before, at("2026-01-01", 10));
        if (after != notLooked)
            story.mark(now, "seam", after, at("2026-03-01", 10));
    }
    [[nodiscard]] Comparison all() const
    {
        return compareWalks(smallCatalogue(), story.history(), then, now);
    }
    [[nodiscard]] PointChange seam() const
    {
        const Comparison c = all();
        REQUIRE(c.points.size() == 1);
        return c.points.front();
    }
};

Change change(MarkState before, MarkState after)
{
    Two two;
    two.marks(before, after);
    return two.seam().change;
}

} // namespace

TEST_CASE("marks alone, without findings")
{
    CHECK(change(pass, pass) == Change::Same);
    CHECK(change(pass, attention) == Change::New);
    CHECK(change(attention, attention) == Change::Same);
    CHECK(change(attention, pass) == Change::Gone);
    for (const MarkState before : {pass, attention, notFitted, couldNot, notLooked}) {
        CHECK(change(before, couldNot) == Change::NotLooked); // could not look is never a pass
        CHECK(change(before, notLooked) == Change::NotLooked);
    }
    for (const MarkState after : {pass, attention}) {
        CHECK(change(notLooked, after) == Change::FirstLook);
        CHECK(change(couldNot, after) == Change::FirstLook);
        CHECK(change(notFitted, after) == Change::FirstLook);
    }
    CHECK(change(pass, notFitted) == Change::NotFitted);
    CHECK(change(attention, notFitted) == Change::NotFitted);
    CHECK(change(notLooked, notFitted) == Change::NotFitted);
    CHECK(change(notFitted, notFitted) == Change::Same);
}

TEST_CASE("what the earlier walk did not look at is carried from the look before it")
{
    Two two;
    const Id before = two.story.walk(at("2025-10-01"), "full_round", {"seam"});
    two.story.mark(before, "seam", pass, at("2025-10-01", 10));
    two.marks(couldNot, attention);
    const PointChange seam = two.seam();
    CHECK(seam.carried);
    CHECK(seam.then == pass);
    CHECK(seam.thenAt == at("2025-10-01", 10));
    CHECK(seam.change == Change::New);
}

TEST_CASE("a look between the two walks is not the earlier walk's")
{
    Two two;
    const Id between = two.story.walk(at("2026-02-01"), "full_round", {"seam"});
    two.story.mark(between, "seam", attention, at("2026-02-01", 10));
    two.marks(notLooked, pass);
    CHECK(two.seam().change == Change::FirstLook);
}

TEST_CASE("attention to pass: mended only when mends account for every finding")
{
    Two two;
    two.marks(attention, pass);
    const Id a = two.story.finding(two.then, "seam", "gap", 3, at("2026-01-01", 10));
    CHECK(two.seam().change == Change::Gone); // no mend, though the finding stays open
    CHECK(two.seam().findings.front().change == Change::NotLooked);
    CHECK(two.seam().findings.front().reason == "point_passed");
    two.story.mend(at("2026-02-01"), "reseal", {a});
    CHECK(two.seam().change == Change::Mended);
    two.story.finding(two.then, "seam", "crack", 2, at("2026-01-01", 10));
    CHECK(two.seam().change == Change::Gone); // the second was not mended
}

TEST_CASE("a mend of the point counts when attention had no finding")
{
    Two two;
    two.marks(attention, pass);
    two.story.mend(at("2026-02-01"), "reseal", {}, {"seam"});
    CHECK(two.seam().change == Change::Mended);
    Two late;
    late.marks(attention, pass);
    late.story.mend(at("2026-03-02"), "reseal", {}, {"seam"}); // after the second walk
    CHECK(late.seam().change == Change::Gone);
}

TEST_CASE("a mend on the afternoon of the earlier walk lies between the two")
{
    Two two;
    two.marks(attention, pass);
    const Id finding = two.story.finding(two.then, "seam", "gap", 3, at("2026-01-01", 10));
    two.story.mend(at("2026-01-01", 30), "reseal", {finding});
    two.story.mark(two.then, "latch", pass, at("2026-01-01", 90)); // the walk went on after the mend
    const Comparison c = two.all();
    REQUIRE(c.points.size() == 1);
    CHECK(c.points.front().change == Change::Mended);
}

TEST_CASE("attention to attention takes its worst finding")
{
    Two two;
    two.marks(attention, attention);
    const Id a = two.story.finding(two.then, "seam", "gap", 3, at("2026-01-01", 10));
    two.story.look(a, two.now, 2, at("2026-03-01", 10));
    CHECK(two.seam().change == Change::Better);
    const Id b = two.story.finding(two.then, "seam", "crack", 2, at("2026-01-01", 10));
    two.story.look(b, two.now, 2, at("2026-03-01", 10));
    CHECK(two.seam().change == Change::Same);
    two.story.look(b, two.now, 4, at("2026-03-01", 11));
    CHECK(two.seam().change == Change::Worse);
    two.story.finding(two.now, "seam", "lifted", 1, at("2026-03-01", 10));
    CHECK(two.seam().change == Change::New);
    CHECK(two.seam().findings.size() == 3);
}

TEST_CASE("points that only one of the walks asked for are listed; new attention among them is shown")
{
    Story story;
    const Id then = story.walk(at("2026-01-01"), "full_round", {"seam", "latch"});
    const Id now = story.walk(at("2026-03-01"), "full_round", {"latch", "grease"});
    story.mark(then, "seam", pass, at("2026-01-01"));
    story.mark(then, "latch", pass, at("2026-01-01"));
    story.mark(now, "latch", pass, at("2026-03-01"));
    story.mark(now, "grease", attention, at("2026-03-01"));
    story.finding(now, "grease", "worn", 2, at("2026-03-01"));
    const Comparison c = compareWalks(smallCatalogue(), story.history(), then, now);
    CHECK(c.onlyThen == std::vector<std::string>{"seam"});
    CHECK(c.onlyNow == std::vector<std::string>{"grease"});
    REQUIRE(c.points.size() == 2);
    CHECK(c.points[0].point == "grease"); // catalogue order
    CHECK(c.points[0].change == Change::FirstLook);
    CHECK(c.points[0].findings.front().change == Change::New);
    CHECK(c.points[1].change == Change::Same);
    CHECK(c.pointCounts.of(Change::FirstLook) == 1);
    CHECK(c.pointCounts.of(Change::Same) == 1);
    CHECK(c.pointCounts.total() == 2);
    CHECK(c.findingCounts.of(Change::New) == 1);
}

TEST_CASE("the order in which the walks are named does not matter; an unknown walk has no marks")
{
    Two two;
    two.marks(pass, attention);
    CHECK(two.all() == compareWalks(smallCatalogue(), two.story.history(), two.now, two.then));
    Id unknown;
    unknown.bytes[0] = 9;
    const Comparison c = compareWalks(smallCatalogue(), two.story.history(), unknown, two.now);
    REQUIRE(c.points.size() == 1);
    CHECK(c.points.front().change == Change::FirstLook);
    CHECK(compareWalks(smallCatalogue(), two.story.history(), two.then, unknown).points.empty());
}

TEST_CASE("slugs of all changes")
{
    std::vector<std::string> slugs;
    for (const Change c : allChanges)
        slugs.emplace_back(slug(c));
    CHECK(slugs == std::vector<std::string>{"new", "worse", "same", "better", "mended", "gone", "not_looked",
                                            "first_look", "not_fitted"});
}
