// SPDX-License-Identifier: Apache-2.0
// The state of a rig: order, counts, holds that come from looks that failed and from events.
#include <doctest/doctest.h>

#include <algorithm>

#include "../due/story.hpp"
#include "concern/state.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

RigState stateAt(const Story &story, LocalTime now, const Catalogue &catalogue = smallCatalogue())
{
    const RigHistory history = story.history();
    return stateOf(catalogue, history, dueBands(catalogue, history, now), now);
}

} // namespace

TEST_CASE("hold first, then risk; counts by call; forbids gathered")
{
    Story story;
    const Id walk = story.walk(at("2026-01-01"));
    for (const char *point : {"shine", "frame", "seam", "nut"})
        story.mark(walk, point, MarkState::Attention, at("2026-01-01"));
    story.mark(walk, "latch", MarkState::Pass, at("2026-01-01"));
    story.finding(walk, "shine", "other", 1, at("2026-01-01"));
    story.finding(walk, "seam", "gap", 4, at("2026-01-01"));
    story.finding(walk, "frame", "bent", 5, at("2026-01-01"));
    const RigState state = stateAt(story, at("2026-01-02"));
    REQUIRE(state.open.size() == 3);
    CHECK(state.open[0].point == "frame");
    CHECK(state.open[1].point == "seam");
    CHECK(state.open[2].point == "shine");
    CHECK(state.hold == 1);
    CHECK(state.mendSoon == 1);
    CHECK(state.watch == 1);
    CHECK(state.forbids == std::set<std::string>{"move"});
    CHECK(state.lookedAt == 5);
    CHECK(state.by == "Ada");
    CHECK(state.lookedSince == at("2026-01-01"));
}

TEST_CASE("an empty history says that nothing was looked at")
{
    const RigState state = stateAt(Story(), at("2026-01-02"));
    CHECK(state.lookedAt == 0);
    CHECK_FALSE(state.lookedSince);
    CHECK(state.hold == 0);
    CHECK(state.neverLooked == 10); // all points but the one of each move
    CHECK(state.dueNow == 10);
    CHECK(state.pastDue == 0);
}

TEST_CASE("a low reading on a mark that says pass holds all the same, once")
{
    Story story;
    const Id walk = story.walk(at("2026-01-01"));
    story.mark(walk, "tread-depth", MarkState::Pass, at("2026-01-01")).readings = {
        {"tread-depth", "wheel 1L", Dimension::Length, 1e-3, "mm"}};
    story.rig().measures.axles = {metres(3)};
    RigState state = stateAt(story, at("2026-01-02"), realCatalogue());
    CHECK(state.hold == 1);
    REQUIRE(state.holds.size() == 1);
    CHECK(state.holds[0].finding.isNull());
    CHECK_FALSE(state.holds[0].acceptable);
    const Id finding = story.finding(walk, "tread-depth", "worn", 2, at("2026-01-01"));
    state = stateAt(story, at("2026-01-02"), realCatalogue());
    CHECK(state.hold == 1); // the finding carries it now
    REQUIRE(state.holds.size() == 1);
    CHECK(state.holds[0].finding == finding);
}

TEST_CASE("could not look holds for a hold-list point of a walk's own set, until it is looked at")
{
    Story story;
    const Id walk = story.walk(at("2026-01-01"), "before_road", {"lap"});
    story.mark(walk, "lap", MarkState::CouldNotLook, at("2026-01-01")).reason = "risky_to_reach";
    RigState state = stateAt(story, at("2026-01-02"));
    REQUIRE(state.couldNotLook.size() == 1);
    CHECK(state.couldNotLook[0].reason == "risky_to_reach");
    CHECK(state.couldNotLook[0].holds);
    CHECK(state.hold == 1);
    REQUIRE(state.holds.size() == 1);
    CHECK(state.holds[0].acceptable);
    CHECK(state.holds[0].hit.rule == "could_not_look");
    CHECK(state.lookedAt == 0); // never a pass

    const Id other = story.walk(at("2026-01-03"), "full_round");
    story.mark(other, "seam", MarkState::Pass, at("2026-01-03"));
    state = stateAt(story, at("2026-01-04"));
    CHECK(state.hold == 1); // another walk does not lift it
    CHECK(state.couldNotLook.empty());
    story.mark(other, "lap", MarkState::Pass, at("2026-01-03", 5));
    CHECK(stateAt(story, at("2026-01-04")).hold == 0);
}

TEST_CASE("a periodic point that could not be looked at keeps its date and does not hold")
{
    Story story;
    story.mark(story.walk(at("2025-01-01")), "frame", MarkState::Pass, at("2025-01-01"));
    const Id walk = story.walk(at("2026-01-01"), "full_round", {"frame"});
    story.mark(walk, "frame", MarkState::CouldNotLook, at("2026-01-01"));
    const RigState state = stateAt(story, at("2026-01-02"));
    CHECK(state.hold == 0);
    CHECK(state.pastDue == 1);
    REQUIRE(state.couldNotLook.size() == 1);
    CHECK_FALSE(state.couldNotLook[0].holds);
}

TEST_CASE("after a flood the event's hold-list points hold until looked at")
{
    Story story;
    story.mark(story.walk(at("2026-01-01")), "frame", MarkState::Pass, at("2026-01-01"));
    story.happening(at("2026-01-05"), "hail"); // not one of rule 15
    CHECK(stateAt(story, at("2026-01-06")).hold == 0);
    story.happening(at("2026-01-07"), "flood");
    const RigState state = stateAt(story, at("2026-01-08"));
    CHECK(state.hold == 1);
    REQUIRE(state.holds.size() == 1);
    CHECK(state.holds[0].hit.number == 15);
    CHECK(state.holds[0].hit.place == "flood");
    story.mark(story.walk(at("2026-01-09")), "frame", MarkState::Pass, at("2026-01-09"));
    CHECK(stateAt(story, at("2026-01-10")).hold == 0);
}

TEST_CASE("a walk that was only started does not hide the one before")
{
    Story story;
    const Id walk = story.walk(at("2026-01-01"));
    story.mark(walk, "seam", MarkState::Pass, at("2026-01-01"));
    story.walk(at("2026-01-05"));
    CHECK(stateAt(story, at("2026-01-06")).walk == walk);
}

TEST_CASE("findings whose ranges overlap are shown as tied")
{
    Story story;
    const Id walk = story.walk(at("2026-01-01"));
    for (const char *point : {"seam", "grease", "shine"})
        story.mark(walk, point, MarkState::Attention, at("2026-01-01"));
    story.finding(walk, "seam", "gap", 3, at("2026-01-01"));
    story.finding(walk, "seam", "gap", 3, at("2026-01-01", 1));
    story.finding(walk, "shine", "other", 1, at("2026-01-01"));
    const RigState state = stateAt(story, at("2026-01-02"));
    REQUIRE(state.open.size() == 3);
    CHECK(state.open[1].tiedWithFirst);
    CHECK_FALSE(state.open[2].tiedWithFirst);
}
