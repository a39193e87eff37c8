// SPDX-License-Identifier: Apache-2.0
// A finding on its own: on the walk under way where that has the point, else between walks.
#include <doctest/doctest.h>

#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const std::string point = "chains-condition"; // on every walk that moves
const std::string away = "belly-pan-sheet";   // not among those of a move

FindingDraft looking(int grade, const Id &same = Id{})
{
    FindingDraft draft = attentionOn(point, grade).findings.front();
    draft.same = same;
    if (!same.isNull())
        draft.defect.clear();
    return draft;
}

Result<MarkReceipt> look(Walker &walker, const std::string &at, const FindingDraft &draft,
                         const std::vector<TypedReading> &readings = {})
{
    walker.home.clock.advance(std::chrono::minutes(1));
    return lookAtFinding(walker.book(), realCatalogue(), walker.rig, at, draft, readings, walker.doer);
}

FindingDraft pan(int grade, const Id &same = Id{})
{
    FindingDraft draft = looking(grade, same);
    if (same.isNull())
        draft.defect = "loose";
    return draft;
}

FindingHistory only(Walker &walker)
{
    const auto all = findingHistories(walker.book(), walker.rig.id).value();
    REQUIRE(all.size() == 1);
    return all.front();
}

} // namespace

TEST_CASE("where the walk has the point, its mark becomes attention and keeps what was written")
{
    Walker walker;
    REQUIRE(walker.mark(passOf(point, "all links turned")));
    const MarkReceipt receipt = look(walker, point, looking(2)).value();
    CHECK(receipt.walk == walker.walk.id);
    const auto marks = marksOf(walker.book(), walker.walk.id).value();
    REQUIRE(marks.size() == 1);
    CHECK(marks[0].state == MarkState::Attention);
    CHECK(marks[0].note == "all links turned");
    CHECK(only(walker).looks.front().walk == walker.walk.id);
    REQUIRE(walker.undo()); // one act
    CHECK(walker.stateOf(point) == MarkState::Pass);
    CHECK(findingHistories(walker.book(), walker.rig.id)->empty());
}

TEST_CASE("a finding that is gone passes no point")
{
    Walker walker;
    const Id id = look(walker, point, looking(2))->findings.front();
    walker.nextWalk();
    const MarkReceipt receipt = look(walker, point, looking(0, id)).value();
    CHECK(receipt.mark.isNull());
    CHECK(walker.stateOf(point) == MarkState::NotLooked);
    CHECK(statusOf(only(walker)) == FindingStatus::Gone);
}

TEST_CASE("two findings on one point stay two, and a look at one is none at the other")
{
    Walker walker;
    const Id first = look(walker, point, looking(2))->findings.front();
    const Id second = look(walker, point, looking(3))->findings.front();
    CHECK(first != second);
    REQUIRE(look(walker, point, looking(4, first)));
    const auto all = findingHistories(walker.book(), walker.rig.id).value();
    REQUIRE(all.size() == 2);
    CHECK(all[0].looks.size() + all[1].looks.size() == 3);
}

TEST_CASE("between walks a look has no walk and marks nothing; it counts by its time")
{
    Walker walker;
    const MarkReceipt receipt = look(walker, away, pan(2)).value(); // a walk is open, without the point
    CHECK(receipt.walk.isNull());
    CHECK(receipt.mark.isNull());
    CHECK(marksOf(walker.book(), walker.walk.id)->empty());
    REQUIRE(walker.finish());
    REQUIRE(look(walker, away, pan(4, receipt.findings.front())));
    const FindingHistory history = only(walker);
    CHECK(history.finding.openedOn.isNull());
    CHECK(history.looks.back().walk.isNull());
    CHECK(history.looks.back().grade == 4);
    CHECK(statusOf(history) == FindingStatus::Open);
    CHECK(projectionRebuilt(walker.book()) == projectionNow(walker.book()));
}

TEST_CASE("readings go to the mark, and stay with the look where there is none")
{
    Walker walker("test", "full_round");
    const auto pressure = [](const char *place, const char *text) {
        return TypedReading{"cold-pressure", place, text};
    };
    FindingDraft leak = looking(3);
    leak.defect = "leaking";
    MarkDraft measured = passOf("tire-pressure");
    measured.readings = {pressure("wheel 1L", "380 kPa"), pressure("wheel 1R", "381 kPa")};
    REQUIRE(walker.mark(measured));
    const Id id = look(walker, "tire-pressure", leak, {pressure("wheel 1L", "300 kPa")})->findings.front();
    const Mark mark = marksOf(walker.book(), walker.walk.id)->front();
    CHECK(mark.readings.size() == 2);
    CHECK(mark.readings.back().si == doctest::Approx(300e3)); // taken again at one place: the later one
    CHECK(only(walker).looks.back().readings.empty());
    REQUIRE(walker.finish());
    REQUIRE(look(walker, "tire-pressure", looking(4, id), {pressure("wheel 1L", "250 kPa")}));
    REQUIRE(only(walker).looks.back().readings.size() == 1);
    CHECK(only(walker).looks.back().readings[0].si == doctest::Approx(250e3));
}

TEST_CASE("what makes no sense is refused and leaves no entry")
{
    Walker walker;
    const Id id = look(walker, point, looking(2))->findings.front();
    const auto before = entryCount(walker.book());
    CHECK(look(walker, "no-such-point", looking(2)).error().code == Errc::NotFound);
    CHECK(look(walker, "slide-out-seals", looking(2)).error().code == Errc::NotFound); // not on this rig
    CHECK(look(walker, away, pan(3, id)).error().code == Errc::InvalidInput);          // of another point
    CHECK(look(walker, point, looking(6, id)).error().code == Errc::OutOfRange);
    CHECK(look(walker, point, looking(0)).error().code == Errc::OutOfRange);
    FindingDraft odd = looking(3, id);
    odd.extentText = "much";
    CHECK(look(walker, point, odd).error().code == Errc::InvalidInput);
    CHECK(entryCount(walker.book()) == before);
}
