// SPDX-License-Identifier: Apache-2.0
// Taking acts back, level by level, without ever losing an entry.
#include <doctest/doctest.h>

#include "logbook/check.hpp"
#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("undo takes the last act back, and the one before, until there is none")
{
    Walker walker;
    CHECK(walker.undo().error().code == Errc::NotFound);
    REQUIRE(walker.mark(passOf("chains-run")));
    REQUIRE(walker.mark(passOf("chains-condition")));
    REQUIRE(walker.mark(couldNotLook("chains-run")));
    const auto written = entryCount(walker.book());
    REQUIRE(walker.undo());
    CHECK(walker.stateOf("chains-run") == MarkState::Pass);
    REQUIRE(walker.undo());
    CHECK(walker.stateOf("chains-condition") == MarkState::NotLooked);
    REQUIRE(walker.undo());
    CHECK(marksOf(walker.book(), walker.walk.id)->empty());
    CHECK(walker.undo().error().code == Errc::NotFound);
    CHECK(entryCount(walker.book()) == written + 3);
    CHECK(checkLogbook(walker.book(), true)->faults.empty());
}

TEST_CASE("a mark that was replaced comes back word for word")
{
    Walker walker("test", "full_round");
    MarkDraft measured = passOf("tire-pressure", "all four");
    measured.how = LookedHow::Measured;
    measured.readings = {{"cold-pressure", "wheel 1L", "341 kPa"}};
    REQUIRE(walker.mark(measured));
    const auto before = marksOf(walker.book(), walker.walk.id).value();
    REQUIRE(walker.mark(attentionOn("tire-pressure", 5, "hiss")));
    REQUIRE(walker.undo());
    CHECK(marksOf(walker.book(), walker.walk.id).value() == before);
}

TEST_CASE("a finding goes with the mark that opened it; marking again opens another")
{
    Walker walker;
    const MarkReceipt first = walker.mark(attentionOn("chains-condition", 3)).value();
    REQUIRE(walker.undo());
    CHECK(findingHistories(walker.book(), walker.rig.id)->empty());
    CHECK(findingOf(walker.book(), first.findings.front()).error().code == Errc::NotFound);
    CHECK(walker.mark(lookAgain("chains-condition", first.findings.front(), 2)).error().code ==
          Errc::NotFound);
    const MarkReceipt again = walker.mark(attentionOn("chains-condition", 2)).value();
    CHECK(again.mark == first.mark);
    CHECK(again.findings.front() != first.findings.front());
    const auto histories = findingHistories(walker.book(), walker.rig.id).value();
    REQUIRE(histories.size() == 1);
    CHECK(histories[0].looks.size() == 1);
    REQUIRE(walker.undo());
    CHECK(walker.stateOf("chains-condition") == MarkState::NotLooked);
    CHECK(checkLogbook(walker.book(), true)->faults.empty());
}

TEST_CASE("a look taken back leaves the finding as it was seen before")
{
    Walker walker;
    const Id finding = walker.mark(attentionOn("chains-condition", 2))->findings.front();
    REQUIRE(walker.mark(lookAgain("chains-condition", finding, 5)));
    REQUIRE(walker.undo());
    const auto history = findingHistories(walker.book(), walker.rig.id)->front();
    REQUIRE(history.looks.size() == 1);
    CHECK(history.looks[0].grade == 2);
    CHECK(walker.stateOf("chains-condition") == MarkState::Attention);
}

TEST_CASE("undo, mark, undo: each undo takes back the last act that still stands")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    REQUIRE(walker.mark(passOf("awning-locks")));
    REQUIRE(walker.undo());
    REQUIRE(walker.mark(passOf("spring-bars")));
    REQUIRE(walker.undo());
    CHECK(walker.stateOf("spring-bars") == MarkState::NotLooked);
    CHECK(walker.stateOf("chains-run") == MarkState::Pass);
    REQUIRE(walker.undo());
    CHECK(marksOf(walker.book(), walker.walk.id)->empty());
}

TEST_CASE("undo stays within its walk, and never unmakes the walk, a mend or a photo")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    walker.nextWalk();
    Mend mend;
    mend.rig = walker.rig.id;
    mend.at = walker.home.clock.now();
    mend.points = {"chains-run"};
    mend.action = "clean";
    REQUIRE(addMend(walker.book(), mend, walker.doer));
    CHECK(walker.undo().error().code == Errc::NotFound);
    CHECK(mendsOf(walker.book(), walker.rig.id)->size() == 1);
    CHECK(walksOf(walker.book(), walker.rig.id)->size() == 2);
    CHECK(marksOf(walker.book(), walksOf(walker.book(), walker.rig.id)->front().id)->size() == 1);
}

TEST_CASE("what was written over outside the walk's acts stays, and the act counts as taken back")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("awning-locks")));
    REQUIRE(walker.mark(passOf("chains-run")));
    const auto marks = marksOf(walker.book(), walker.walk.id).value();
    Act aside;
    aside.by = "T. Tester";
    aside.changes = {
        {findMark(marks, "chains-run")->id, "mark", {{"state", "could_not_look"}, {"reason", "too_dark"}}}};
    REQUIRE(walker.book().record(aside));
    REQUIRE(walker.undo());
    CHECK(walker.stateOf("chains-run") == MarkState::CouldNotLook);
    REQUIRE(walker.undo()); // now the mark before, not the same act again
    CHECK(walker.stateOf("awning-locks") == MarkState::NotLooked);
    CHECK(walker.stateOf("chains-run") == MarkState::CouldNotLook);
    CHECK(walker.undo().error().code == Errc::NotFound);
    CHECK(checkLogbook(walker.book(), true)->faults.empty());
}

TEST_CASE("undo survives reopening")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    REQUIRE(walker.mark(passOf("awning-locks")));
    REQUIRE(walker.undo());
    CHECK(walker.home.reopened().undo(walker.walk.id, "W. Tester"));
    CHECK(marksOf(walker.book(), walker.walk.id)->empty());
}
