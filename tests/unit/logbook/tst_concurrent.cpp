// SPDX-License-Identifier: Apache-2.0
// Two devices mark one walk without knowing of each other: the worst mark shows until a person resolves.
#include <doctest/doctest.h>

#include "logbook/check.hpp"
#include "logbook/query.hpp"
#include "support/actions.hpp"
#include "support/streams.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// A walk on one device and a second device that knows the walk.
struct Pair {
    Walker here{"here"};
    TestBook there{"there"};

    Pair() { bringThere(); }
    void bringThere() { receive(there.book(), here.book(), ownEntries(here.book())); }
    void bringHere() { receive(here.book(), there.book(), ownEntries(there.book())); }
    Result<MarkReceipt> markThere(const MarkDraft &draft)
    {
        there.clock.advance(std::chrono::minutes(1));
        return markPoint(there.book(), realCatalogue(), here.rig, here.walk, draft, {"T. Tester", {}, {}});
    }
    MarkState stateThere(const std::string &point)
    {
        const auto marks = marksOf(there.book(), here.walk.id).value();
        const Mark *mark = findMark(marks, point);
        return mark == nullptr ? MarkState::NotLooked : mark->state;
    }
};

MarkDraft draftOf(MarkState state)
{
    MarkDraft draft = state == MarkState::Attention ? attentionOn("chains-run", 3) : passOf("chains-run");
    draft.state = state;
    draft.reason = state == MarkState::CouldNotLook ? "too_dark" : "";
    return draft;
}

constexpr MarkState worstLast[] = {MarkState::NotFitted, MarkState::Pass, MarkState::CouldNotLook,
                                   MarkState::Attention};

} // namespace

TEST_CASE("attention over could not look over pass over not fitted, whoever was later")
{
    for (int a = 0; a < 4; ++a) {
        for (int b = 0; b < 4; ++b) {
            CAPTURE(a);
            CAPTURE(b);
            Pair pair;
            REQUIRE(pair.here.mark(draftOf(worstLast[a])));
            pair.there.clock.advance(std::chrono::hours(a > b ? 5 : 0)); // sometimes the lesser one is later
            REQUIRE(pair.markThere(draftOf(worstLast[b])));
            pair.bringHere();
            pair.bringThere();
            CHECK(pair.here.stateOf("chains-run") == worstLast[std::max(a, b)]);
            CHECK(pair.stateThere("chains-run") == worstLast[std::max(a, b)]);
        }
    }
}

TEST_CASE("a mark that has seen the other replaces it, with a clock that is years behind too")
{
    Pair pair;
    REQUIRE(pair.here.mark(draftOf(MarkState::Attention)));
    pair.bringThere();
    pair.there.clock.set(timeAt("2011-01-01T00:00:00Z"));
    REQUIRE(pair.markThere(draftOf(MarkState::Pass)));
    pair.bringHere();
    CHECK(pair.here.stateOf("chains-run") == MarkState::Pass);
}

TEST_CASE("a person resolves; taking that back shows the worst again")
{
    Pair pair;
    REQUIRE(pair.here.mark(draftOf(MarkState::Attention)));
    REQUIRE(pair.markThere(draftOf(MarkState::Pass))); // the later one is the lesser
    pair.bringHere();
    REQUIRE(pair.here.mark(draftOf(MarkState::NotFitted)));
    CHECK(pair.here.stateOf("chains-run") == MarkState::NotFitted);
    REQUIRE(pair.here.undo());
    CHECK(pair.here.stateOf("chains-run") == MarkState::Attention);
}

TEST_CASE("undo takes back what this device did, not what came from another")
{
    Pair pair;
    REQUIRE(pair.here.mark(passOf("awning-locks")));
    pair.there.clock.advance(std::chrono::hours(1));
    REQUIRE(pair.markThere(passOf("spring-bars")));
    pair.bringHere();
    REQUIRE(pair.here.undo());
    CHECK(pair.here.stateOf("awning-locks") == MarkState::NotLooked);
    CHECK(pair.here.stateOf("spring-bars") == MarkState::Pass);
}

TEST_CASE("taking my mark back leaves what another wrote over it, or beside it")
{
    Pair over;
    REQUIRE(over.here.mark(draftOf(MarkState::Pass)));
    over.bringThere();
    REQUIRE(over.markThere(draftOf(MarkState::Attention))); // has seen mine
    over.bringHere();
    REQUIRE(over.here.undo());
    CHECK(over.here.stateOf("chains-run") == MarkState::Attention);
    CHECK(over.here.undo().error().code == Errc::NotFound); // it is taken back, though it changed nothing

    Pair beside;
    REQUIRE(beside.here.mark(draftOf(MarkState::Attention)));
    REQUIRE(beside.markThere(draftOf(MarkState::Pass))); // has not seen mine
    beside.bringHere();
    REQUIRE(beside.here.undo());
    beside.bringThere();
    CHECK(beside.here.stateOf("chains-run") == MarkState::Pass);
    CHECK(beside.stateThere("chains-run") == MarkState::Pass);
    CHECK(marksOf(beside.here.book(), beside.here.walk.id)->front().by == "T. Tester");
}

TEST_CASE("taken back on one device, marked on the other: the mark stays")
{
    Pair pair;
    REQUIRE(pair.here.mark(draftOf(MarkState::Pass)));
    pair.bringThere();
    REQUIRE(pair.markThere(couldNotLook("chains-run")));
    pair.here.home.clock.advance(std::chrono::hours(3));
    REQUIRE(pair.here.undo());
    pair.bringHere();
    pair.bringThere();
    CHECK(pair.here.stateOf("chains-run") == MarkState::CouldNotLook);
    CHECK(pair.stateThere("chains-run") == MarkState::CouldNotLook);
}

TEST_CASE("a state of a newer version counts as the worst")
{
    Pair pair;
    REQUIRE(pair.here.mark(draftOf(MarkState::Pass)));
    Act act;
    act.by = "T. Tester";
    act.scope = pair.here.walk.id;
    act.changes = {
        {marksOf(pair.here.book(), pair.here.walk.id)->front().id, "mark", {{"state", "sniffed"}}}};
    REQUIRE(pair.there.book().record(act));
    pair.bringHere();
    CHECK(pair.here.stateOf("chains-run") == MarkState::Attention);
}

TEST_CASE("both logbooks check clean and show the same")
{
    Pair pair;
    REQUIRE(pair.here.mark(attentionOn("chains-condition", 4)));
    REQUIRE(pair.markThere(passOf("chains-condition")));
    REQUIRE(pair.markThere(passOf("spring-bars")));
    pair.bringHere();
    pair.bringThere();
    CHECK(checkLogbook(pair.here.book(), true)->faults.empty());
    CHECK(checkLogbook(pair.there.book(), true)->faults.empty());
    CHECK(checkLogbook(pair.here.book(), false)->streams == 2);
    CHECK(marksOf(pair.here.book(), pair.here.walk.id).value() ==
          marksOf(pair.there.book(), pair.here.walk.id).value());
}
