// SPDX-License-Identifier: Apache-2.0
// What starts a point's clock, what halves its age, and what leaves it alone.
#include <doctest/doctest.h>

#include "due/clock.hpp"
#include "story.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

PointClock clockAfter(const std::string &action)
{
    Story story;
    const Id walk = story.walk(at("2026-01-01"));
    story.mark(walk, "seam", MarkState::Pass, at("2026-01-01"));
    story.trip(at("2026-01-05"), at("2026-01-06"), kilometres(400));
    story.mend(at("2026-01-21"), action, {}, {"seam"});
    return clocksOf(story.history(), at("2026-02-01")).at("seam");
}

} // namespace

TEST_CASE("replace, clean and lubricate start the clock anew")
{
    for (const char *action : {"replace", "clean", "lubricate"}) {
        const PointClock clock = clockAfter(action);
        CAPTURE(action);
        CHECK(clock.from == at("2026-01-21"));
        CHECK(clock.startedBy == action);
        CHECK(clock.keptDays == 0.0);
        CHECK(clock.keptDistance == Distance());
        CHECK(clock.lastLook == at("2026-01-01"));
    }
}

TEST_CASE("re-seal and re-torque keep half the age, in days and in distance")
{
    for (const char *action : {"reseal", "retorque"}) {
        const PointClock clock = clockAfter(action);
        CAPTURE(action);
        CHECK(clock.from == at("2026-01-21"));
        CHECK(clock.keptDays == doctest::Approx(10.0)); // half of 20 days
        CHECK(clock.keptDistance.si() == doctest::Approx(200e3));
    }
}

TEST_CASE("adjust and other leave the clock alone")
{
    for (const char *action : {"adjust", "other"})
        CHECK(clockAfter(action).from == at("2026-01-01"));
}

TEST_CASE("half of an unknown age is unknown")
{
    Story story;
    story.mend(at("2026-01-21"), "reseal", {}, {"seam"});
    CHECK_FALSE(clocksOf(story.history(), at("2026-02-01")).at("seam").from);
}

TEST_CASE("a mend reaches the point through the finding it names")
{
    Story story;
    const Id walk = story.walk(at("2026-01-01"));
    story.mark(walk, "seam", MarkState::Attention, at("2026-01-01"));
    const Id finding = story.finding(walk, "seam", "gap", 3, at("2026-01-01"));
    story.mend(at("2026-01-10"), "replace", {finding});
    CHECK(clocksOf(story.history(), at("2026-02-01")).at("seam").from == at("2026-01-10"));
}

TEST_CASE("attention is a look, could not look is not, and the future does not count")
{
    Story story;
    const Id walk = story.walk(at("2026-01-01"));
    story.mark(walk, "seam", MarkState::Attention, at("2026-01-01"));
    const Id later = story.walk(at("2026-01-10"));
    story.mark(later, "seam", MarkState::CouldNotLook, at("2026-01-10"));
    const Id future = story.walk(at("2027-01-01"));
    story.mark(future, "seam", MarkState::Pass, at("2027-01-01"));
    const PointClock clock = clocksOf(story.history(), at("2026-02-01")).at("seam");
    CHECK(clock.lastLook == at("2026-01-01"));
    CHECK(clock.couldNotLook == at("2026-01-10"));
    CHECK_FALSE(clock.notFitted);
}
