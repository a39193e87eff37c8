// SPDX-License-Identifier: Apache-2.0
// Due list and state obey the owner's choices, and a hidden point never hides a hold.
#include <doctest/doctest.h>

#include <algorithm>

#include "logbook/own_points.hpp"
#include "round/history.hpp"
#include "round/state.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Standing standing(Walker &walker)
{
    RigHistory history = loadHistory(walker.book(), walker.rig.id).value();
    const Catalogue mine = realCatalogue().withOwn(history.own);
    return standingOf(mine, std::move(history), walker.book().now());
}

} // namespace

TEST_CASE("a hidden point has no due band; the state names it when it is of the road")
{
    Walker walker;
    REQUIRE(hidePoint(walker.book(), realCatalogue(), walker.rig.id, "tread-depth", "", walker.doer));
    REQUIRE(hidePoint(walker.book(), realCatalogue(), walker.rig.id, "awning-fabric", "", walker.doer));
    const Standing now = standing(walker);
    CHECK(findBand(now.bands, "tread-depth") == nullptr);
    CHECK(findBand(now.bands, "awning-fabric") == nullptr);
    REQUIRE(now.state.hidden.size() == 1);
    CHECK(now.state.hidden.front().point == "tread-depth");
    CHECK(now.state.hidden.front().by.by == walker.doer.by);
}

TEST_CASE("hiding a point with a finding on hold lifts nothing")
{
    Walker walker("test", "full_round");
    REQUIRE(walker.mark(attentionOn("tread-depth", 5)));
    const Standing before = standing(walker);
    REQUIRE(before.state.hold > 0);
    REQUIRE(hidePoint(walker.book(), realCatalogue(), walker.rig.id, "tread-depth", "", walker.doer));
    const Standing after = standing(walker);
    CHECK(after.state.hold == before.state.hold);
    CHECK(after.state.forbids == before.state.forbids);
}

TEST_CASE("an own point falls due like any other, a shorter interval sooner")
{
    Walker walker("test", "full_round");
    REQUIRE(walker.mark(passOf("tread-depth")));
    const Standing before = standing(walker);
    const DueBand *usual = findBand(before.bands, "tread-depth");
    REQUIRE(usual != nullptr);
    REQUIRE(setOwnInterval(walker.book(), realCatalogue(), walker.rig.id, {"tread-depth", 1, {}, {}, {}},
                           walker.doer));
    OwnPoint point;
    point.title = "Step light";
    point.stand = "kerb-front";
    point.zone = "inside";
    point.consequence = {"C"};
    point.interval.months = 3;
    REQUIRE(addOwnPoint(walker.book(), realCatalogue(), walker.rig.id, point, walker.doer));
    const Standing after = standing(walker);
    REQUIRE(findBand(after.bands, "tread-depth") != nullptr);
    CHECK(*findBand(after.bands, "tread-depth")->likely < *usual->likely);
    REQUIRE(findBand(after.bands, "own-step-light") != nullptr);
    CHECK(findBand(after.bands, "own-step-light")->rule == "never_looked");
}
