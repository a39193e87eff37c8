// SPDX-License-Identifier: Apache-2.0
// How long a decision to move once stays in force, and what it never does.
#include <doctest/doctest.h>

#include "../due/story.hpp"
#include "concern/accepted.hpp"
#include "concern/state.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr std::string_view day = "2026-01-01";

struct Missed {
    Story story;
    Id walk;
    Acceptance acceptance;

    Missed()
    {
        walk = story.walk(at(day), "before_road", {"lap"});
        story.mark(walk, "lap", MarkState::CouldNotLook, at(day));
        acceptance.id = story.nextId();
        acceptance.walk = walk;
        acceptance.point = "lap";
        acceptance.by = "Ada";
        acceptance.at = at(day, 10);
    }

    [[nodiscard]] RigHistory history() const
    {
        RigHistory h = story.history();
        h.acceptances = {acceptance};
        return h;
    }

    [[nodiscard]] RigState stateAt(LocalTime now) const
    {
        const RigHistory h = history();
        return stateOf(smallCatalogue(), h, dueBands(smallCatalogue(), h, now), now);
    }
};

} // namespace

TEST_CASE("accepted for one journey: shown, counted, still forbidding")
{
    const Missed missed;
    const RigState before = missed.stateAt(at(day, 5));
    CHECK(before.accepted == 0);
    const RigState after = missed.stateAt(at(day, 20));
    REQUIRE(after.holds.size() == 1);
    REQUIRE(after.holds[0].accepted.has_value());
    CHECK(after.holds[0].accepted->by == "Ada");
    CHECK(after.hold == 1);
    CHECK(after.accepted == 1);
    CHECK(after.forbids.count("move") == 1);
}

TEST_CASE("it ends after 24 hours, to the minute")
{
    const Missed missed;
    CHECK(missed.stateAt(at(day, 10 + 24 * 60)).accepted == 1);
    CHECK(missed.stateAt(at(day, 10 + 24 * 60 + 1)).accepted == 0);
}

TEST_CASE("it ends when the rig is uncoupled: a walk on arrival or parked, or a stay")
{
    for (const char *kind : {"on_arrival", "parked"}) {
        Missed missed;
        missed.story.walk(at(day, 60), kind);
        CAPTURE(kind);
        CHECK(missed.stateAt(at(day, 59)).accepted == 1);
        CHECK(missed.stateAt(at(day, 61)).accepted == 0);
    }
    Missed stop;
    stop.story.walk(at(day, 60), "at_stop");
    CHECK(stop.stateAt(at(day, 61)).accepted == 1);
    RigHistory h = Missed().history();
    Stay stay;
    stay.from = at(day, 60);
    h.stays = {stay};
    CHECK(isInForce(h.acceptances[0], h, at(day, 59)));
    CHECK_FALSE(isInForce(h.acceptances[0], h, at(day, 61)));
}

TEST_CASE("it covers its own failed look only: not another point, walk or a later one")
{
    Missed missed;
    missed.acceptance.point = "nut";
    CHECK(missed.stateAt(at(day, 20)).accepted == 0);
    Missed other;
    other.acceptance.walk = other.story.nextId();
    CHECK(other.stateAt(at(day, 20)).accepted == 0);
    Missed again;
    const Id second = again.story.walk(at(day, 30), "before_road", {"lap"});
    again.story.mark(second, "lap", MarkState::CouldNotLook, at(day, 30));
    CHECK(again.stateAt(at(day, 40)).accepted == 0);
}

TEST_CASE("a found hold is not touched by an acceptance of its point")
{
    Missed missed;
    const Id walk = missed.story.walk(at(day, 1), "full_round", {"lap"});
    missed.story.mark(walk, "lap", MarkState::Attention, at(day, 1));
    missed.story.finding(walk, "lap", "loose", 4, at(day, 1));
    const RigState state = missed.stateAt(at(day, 20));
    REQUIRE(state.holds.size() == 1);
    CHECK_FALSE(state.holds[0].acceptable);
    CHECK_FALSE(state.holds[0].accepted.has_value());
    CHECK(state.accepted == 0);
}
