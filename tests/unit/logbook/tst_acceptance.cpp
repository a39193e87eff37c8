// SPDX-License-Identifier: Apache-2.0
// Writing that a person moves once although one point could not be looked at.
#include <doctest/doctest.h>

#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Acceptance of(const Walker &walker, const std::string &point)
{
    Acceptance a;
    a.rig = walker.rig.id;
    a.walk = walker.walk.id;
    a.point = point;
    a.reason = "too_dark";
    a.knowing = "a step left down";
    a.by = "W. Tester";
    a.at = timeAt("2026-11-20T08:10:00+13:00");
    return a;
}

} // namespace

TEST_CASE("an acceptance is written once and read back whole")
{
    Walker walker;
    REQUIRE(walker.mark(couldNotLook("pull-away-lap")));
    const Acceptance a = of(walker, "pull-away-lap");
    const Result<Id> id = acceptMissed(walker.book(), a, Role::Owner, walker.doer);
    REQUIRE(id);
    const auto read = acceptancesOf(walker.book(), walker.rig.id);
    REQUIRE(read);
    REQUIRE(read->size() == 1);
    Acceptance wanted = a;
    wanted.id = *id;
    CHECK(read->front() == wanted);
    CHECK(projectionNow(walker.book()) == projectionRebuilt(walker.book()));
}

TEST_CASE("never by anyone but the owner")
{
    Walker walker;
    REQUIRE(walker.mark(couldNotLook("pull-away-lap")));
    for (const Role role : {Role::Helper, Role::Technician, Role::Renter, Role::Viewer}) {
        const Result<Id> id = acceptMissed(walker.book(), of(walker, "pull-away-lap"), role, walker.doer);
        CAPTURE(slug(role));
        REQUIRE_FALSE(id);
        CHECK(id.error().code == Errc::Conflict);
    }
    CHECK(acceptancesOf(walker.book(), walker.rig.id)->empty());
}

TEST_CASE("only what could not be looked at, with reason, consequence and name")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("pull-away-lap")));
    CHECK(acceptMissed(walker.book(), of(walker, "pull-away-lap"), Role::Owner, walker.doer).error().code ==
          Errc::Conflict);
    CHECK(acceptMissed(walker.book(), of(walker, "chains-run"), Role::Owner, walker.doer).error().code ==
          Errc::Conflict); // no mark at all
    REQUIRE(walker.mark(couldNotLook("chains-run")));
    for (std::string Acceptance::*field : {&Acceptance::reason, &Acceptance::knowing, &Acceptance::by}) {
        Acceptance a = of(walker, "chains-run");
        a.*field = " \t";
        CHECK(acceptMissed(walker.book(), a, Role::Owner, walker.doer).error().code == Errc::InvalidInput);
    }
    CHECK(acceptancesOf(walker.book(), walker.rig.id)->empty());
}
