// SPDX-License-Identifier: Apache-2.0
// An owner's points in the logbook: added, hidden, shown again, looked at at other intervals.
#include <doctest/doctest.h>

#include "base/units.hpp"
#include "logbook/own_points.hpp"
#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

OwnPoint stepLight()
{
    OwnPoint point;
    point.title = "Step light";
    point.stand = "kerb-front";
    point.zone = "inside";
    point.consequence = {"C"};
    point.interval.months = 3;
    return point;
}

OwnChoices choices(Walker &walker) { return ownChoicesOf(walker.book(), walker.rig.id).value(); }

Catalogue mine(Walker &walker) { return realCatalogue().withOwn(choices(walker)); }

} // namespace

TEST_CASE("a point is added once, for one rig, by name and date")
{
    Walker walker;
    const auto slug = addOwnPoint(walker.book(), mine(walker), walker.rig.id, stepLight(), walker.doer);
    REQUIRE(slug);
    CHECK(*slug == "own-step-light");
    const OwnChoices own = choices(walker);
    REQUIRE(own.added.size() == 1);
    CHECK(own.added.front().by == walker.doer.by);
    CHECK(own.added.front().date == civilDate(walker.book().now()));
    CHECK(own.added.front().interval.months == 3);
    const auto again = addOwnPoint(walker.book(), mine(walker), walker.rig.id, stepLight(), walker.doer);
    CHECK(again.error().code == Errc::Conflict);
    Rig other = tandem();
    other.name = "Other";
    const Id id = saveRig(walker.book(), other, walker.doer).value();
    CHECK(ownChoicesOf(walker.book(), id)->isEmpty());
    OwnPoint odd = stepLight();
    odd.title = "Odd";
    odd.stand = "moon";
    CHECK(addOwnPoint(walker.book(), mine(walker), walker.rig.id, odd, walker.doer).error().code ==
          Errc::InvalidInput);
    CHECK(choices(walker).added.size() == 1);
}

TEST_CASE("hidden, refused twice, shown again, hidden again; and the file stays whole")
{
    Walker walker;
    Logbook &book = walker.book();
    const Id rig = walker.rig.id;
    CHECK(hidePoint(book, mine(walker), rig, "tread-depth", "", Doer{}).error().where == "by");
    REQUIRE(hidePoint(book, mine(walker), rig, "tread-depth", "gauge lost", walker.doer));
    REQUIRE(choices(walker).hidden.size() == 1);
    CHECK(choices(walker).hidden.front().note == "gauge lost");
    CHECK(mine(walker).find("tread-depth")->hidden->by == walker.doer.by);
    CHECK(hidePoint(book, mine(walker), rig, "tread-depth", "", walker.doer).error().code == Errc::Conflict);
    REQUIRE(showPoint(book, mine(walker), rig, "tread-depth", walker.doer));
    CHECK(choices(walker).isEmpty());
    CHECK(showPoint(book, mine(walker), rig, "tread-depth", walker.doer).error().code == Errc::Conflict);
    REQUIRE(hidePoint(book, mine(walker), rig, "tread-depth", "", walker.doer));
    CHECK(choices(walker).hidden.front().note.empty());
    CHECK(hidePoint(book, mine(walker), rig, "moon", "", walker.doer).error().code == Errc::NotFound);
    CHECK(showPoint(book, mine(walker), rig, "moon", walker.doer).error().code == Errc::NotFound);
    CHECK(projectionNow(book) == projectionRebuilt(book));
}

TEST_CASE("an interval is kept limit by limit and given back")
{
    Walker walker;
    Logbook &book = walker.book();
    const Id rig = walker.rig.id;
    const auto set = [&](std::optional<int> months, std::optional<Distance> distance) {
        return setOwnInterval(book, realCatalogue(), rig, {"tread-depth", months, distance, {}, {}},
                              walker.doer);
    };
    REQUIRE(set(2, std::nullopt));
    REQUIRE(set(std::nullopt, kilometres(4000)));
    REQUIRE(choices(walker).every.size() == 1);
    CHECK(choices(walker).every.front().months == 2);
    CHECK(choices(walker).every.front().distance == kilometres(4000));
    CHECK(mine(walker).find("tread-depth")->interval.months == 2);
    // longer than the owner's but not than the catalogue's three months: taken
    CHECK(set(3, std::nullopt));
    CHECK(set(4, std::nullopt).error().code == Errc::InvalidInput);
    CHECK(choices(walker).every.front().months == 3);
    REQUIRE(clearOwnInterval(book, rig, "tread-depth", walker.doer));
    CHECK(choices(walker).isEmpty());
    CHECK(clearOwnInterval(book, rig, "tread-depth", walker.doer).error().code == Errc::NotFound);
    REQUIRE(set(1, std::nullopt));
    CHECK_FALSE(choices(walker).every.front().distance);
}

TEST_CASE("a walk keeps the tape it was given and what its time left out")
{
    Walker walker;
    REQUIRE(walker.finish());
    const std::vector<TapeLine> tape = {{"tire-bulges", {"tire-bulges"}}};
    const WalkBudget budget{10.0, {"tread-depth", "roof-chalk"}};
    const auto walk = startWalk(walker.book(), walker.rig, "full_round", tape, budget, walker.doer);
    REQUIRE(walk);
    const Walk read = openWalk(walker.book(), walker.rig.id).value().value();
    CHECK(read.budget == budget);
    REQUIRE(read.tape.size() == 1);
    CHECK(read.tape.front().slug == "tire-bulges");
}
