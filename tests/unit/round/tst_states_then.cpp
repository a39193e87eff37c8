// SPDX-License-Identifier: Apache-2.0
// The state worked out again for an earlier walk is the one that the logbook gave on that day.
#include <doctest/doctest.h>

#include "round/history.hpp"
#include "round/state.hpp"
#include "round/states_then.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr std::size_t many = 100;

Standing standing(Walker &walker)
{
    RigHistory history = loadHistory(walker.book(), walker.rig.id).value();
    return standingOf(realCatalogue(), std::move(history), walker.book().now());
}

// A walk that was finished already, and the days until it.
void begin(Walker &walker, int days)
{
    walker.home.clock.advance(std::chrono::hours(24 * days));
    walker.walk =
        startWalk(walker.book(), realCatalogue(), walker.rig, "full_round", {}, {}, walker.doer).value();
}

void isLike(const RigState &then, const RigState &was)
{
    REQUIRE(then.open.size() == was.open.size());
    for (std::size_t i = 0; i < was.open.size(); ++i) {
        CHECK(then.open[i].id == was.open[i].id);
        CHECK(then.open[i].concern.number == was.open[i].concern.number);
        CHECK(then.open[i].concern.call == was.open[i].concern.call);
    }
    REQUIRE(then.points.size() == was.points.size());
    for (std::size_t i = 0; i < was.points.size(); ++i) {
        CHECK(then.points[i].point == was.points[i].point);
        CHECK(then.points[i].number == was.points[i].number);
    }
    CHECK(then.holds.size() == was.holds.size());
    CHECK(then.forbids == was.forbids);
}

} // namespace

TEST_CASE("each walk's state comes back as it was on its day, whatever was written since")
{
    Walker walker("test", "full_round");
    REQUIRE(walker.mark(passOf("tread-depth")));
    REQUIRE(walker.mark(attentionOn("roof-vent-sealant", 2)));
    REQUIRE(walker.finish());
    const Standing first = standing(walker);
    REQUIRE(first.state.open.size() == 1);
    const Id finding = first.state.open.front().id;

    begin(walker, 90);
    REQUIRE(walker.mark(lookAgain("roof-vent-sealant", finding, 4)));
    REQUIRE(walker.mark(attentionOn("tread-depth", 5)));
    REQUIRE(walker.finish());
    const Standing second = standing(walker);

    begin(walker, 30);
    REQUIRE(walker.mark(lookAgain("roof-vent-sealant", finding, 0)));
    REQUIRE(walker.finish());
    walker.home.clock.advance(std::chrono::hours(24));
    const Standing now = standing(walker);

    const auto states = statesThen(realCatalogue(), now.history, now.now, many);
    REQUIRE(states.size() == 4); // three walks, then now
    CHECK(states.back().walk.isNull());
    isLike(states[0].state, first.state);
    isLike(states[1].state, second.state);
    isLike(states[3].state, now.state);

    const auto one = concernsThen(states, {{}, finding});
    REQUIRE(one.size() == 4);
    CHECK(one[1].number > one[0].number); // worse at the second walk
    CHECK(one[2].closed);                 // gone at the third
    CHECK(one[2].number == 0.0);
    const auto worst = concernsThen(states, {});
    CHECK(worst[1].call == Call::Hold);
    CHECK(worst[1].point == "tread-depth");
    const auto point = concernsThen(states, {"tread-depth", Id()});
    REQUIRE(point.size() == 4);
    CHECK(point[0].call == Call::None);
    CHECK(point[1].call == Call::Hold);
}

TEST_CASE("only the last walks are worked out again, and those without a mark not at all")
{
    Walker walker("test", "full_round");
    for (int i = 0; i < 3; ++i) {
        REQUIRE(walker.mark(passOf("tread-depth")));
        walker.nextWalk("full_round");
        walker.home.clock.advance(std::chrono::hours(24));
    }
    const Standing now = standing(walker); // the fourth has no mark yet
    CHECK(statesThen(realCatalogue(), now.history, now.now, many).size() == 4);
    const auto two = statesThen(realCatalogue(), now.history, now.now, 2);
    REQUIRE(two.size() == 3);
    CHECK(two[0].at.instant < two[1].at.instant);
    CHECK(statesThen(realCatalogue(), RigHistory(), now.now, many).empty());
}

TEST_CASE("a finding has no concern before it was opened")
{
    Walker walker("test", "full_round");
    REQUIRE(walker.mark(passOf("tread-depth")));
    walker.home.clock.advance(std::chrono::hours(24));
    walker.nextWalk("full_round");
    const auto receipt = walker.mark(attentionOn("roof-vent-sealant", 3));
    REQUIRE(receipt);
    walker.home.clock.advance(std::chrono::hours(1));
    const Standing now = standing(walker);
    REQUIRE(now.state.open.size() == 1);
    const auto states = statesThen(realCatalogue(), now.history, now.now, many);
    CHECK(states.size() == 3);
    CHECK(concernsThen(states, {{}, now.state.open.front().id}).size() == 2);
}
