// SPDX-License-Identifier: Apache-2.0
// Taking back what was written outside a walk.
#include <doctest/doctest.h>

#include "logbook/check.hpp"
#include "logbook/query.hpp"
#include "logbook/undo.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Result<Receipt> takeLast(Walker &walker)
{
    walker.home.clock.advance(std::chrono::minutes(1));
    const Result<LastAct> last = lastAct(walker.book());
    return last ? takeBack(walker.book(), last->act, "W. Tester") : last.error();
}

Stock sealant(const Walker &walker, double cartridges)
{
    return {{},
            walker.rig.id,
            "lap-sealant",
            Dimension::Count,
            cartridges,
            "",
            timeAt("2026-05-01T10:00:00+12:00"),
            "W"};
}

} // namespace

TEST_CASE("a figure of the rig goes back to what it was, and forward again by writing it")
{
    Walker walker;
    Rig changed = walker.rig;
    changed.name = "Another name";
    REQUIRE(saveRig(walker.book(), changed, walker.doer));
    CHECK(lastAct(walker.book())->type == "rig");
    CHECK(lastAct(walker.book())->entity == walker.rig.id);
    REQUIRE(takeLast(walker));
    CHECK(rigOf(walker.book(), walker.rig.id)->name == walker.rig.name);
    CHECK(checkLogbook(walker.book(), true)->faults.empty());
    CHECK(projectionNow(walker.book()) == projectionRebuilt(walker.book()));
}

TEST_CASE("a count of supplies, act after act")
{
    Walker walker;
    REQUIRE(setStock(walker.book(), sealant(walker, 2), walker.doer));
    REQUIRE(setStock(walker.book(), sealant(walker, 5), walker.doer));
    const auto written = entryCount(walker.book());
    REQUIRE(takeLast(walker));
    REQUIRE(takeLast(walker));
    CHECK(stocksOf(walker.book(), walker.rig.id)->empty());
    CHECK(entryCount(walker.book()) > written); // nothing was removed
    CHECK(checkLogbook(walker.book(), true)->faults.empty());
}

TEST_CASE("the end of a walk is taken back, its beginning and the rig's are not")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    REQUIRE(finishWalk(walker.book(), walker.walk, walker.doer));
    CHECK(lastAct(walker.book())->type == "walk");
    REQUIRE(takeLast(walker));
    CHECK_FALSE(walkOf(walker.book(), walker.walk.id)->finished.has_value());
    REQUIRE(walker.mark(passOf("chains-condition")));
    const auto refused = takeLast(walker);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == Errc::Conflict);
    CHECK(walkOf(walker.book(), walker.walk.id).has_value());
}

TEST_CASE("what was written since stops it, and an empty logbook has nothing")
{
    Walker walker;
    REQUIRE(setStock(walker.book(), sealant(walker, 2), walker.doer));
    const Id first = lastAct(walker.book())->act;
    REQUIRE(setStock(walker.book(), sealant(walker, 5), walker.doer));
    CHECK(takeBack(walker.book(), first, "W").error().code == Errc::Conflict);
    TestBook empty;
    CHECK(lastAct(empty.book()).error().code == Errc::NotFound);
}

TEST_CASE("what was written over since is not taken back, and it is said")
{
    Walker walker;
    const Id stock = setStock(walker.book(), sealant(walker, 2), walker.doer).value();
    Act over;
    over.by = "Another";
    over.scope = walker.walk.id; // so that the count still stands last outside the walk
    over.changes = {{stock, "stock", {{"by", "Another"}}}};
    REQUIRE(walker.book().record(over));
    const auto written = entryCount(walker.book());
    const auto refused = takeLast(walker);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == Errc::Conflict);
    CHECK(entryCount(walker.book()) == written);
}
