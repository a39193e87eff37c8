// SPDX-License-Identifier: Apache-2.0
// Rows 20 to 23: wrong clocks, two edits of one field, an edit beside a deletion, a pass beside attention.
#include <doctest/doctest.h>

#include "logbook/conflicts.hpp"
#include "row.hpp"
#include "support/party.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const Doer person{"a person", std::nullopt, std::nullopt};

} // namespace

TEST_CASE("row 20: clocks that are years off never overrule who saw the value")
{
    int overruled = 0;
    int tried = 0;
    // 1970, ten years behind and ahead, 2038, 2106
    for (const char *clock : {"1970-01-01T00:00:00Z", "2016-03-14T09:00:00Z", "2036-03-14T09:00:00Z",
                              "2038-01-19T03:14:08Z", "2106-02-07T06:28:16Z"}) {
        for (const bool wrongFirst : {true, false}) {
            Shared s;
            Party &first = wrongFirst ? s.other : s.owner;
            Party &second = wrongFirst ? s.owner : s.other;
            s.other.home.clock.set(timeAt(clock));
            const Id trip = s.owner.home.ids.next();
            first.set(trip, "trip", {{"rig", s.rig.text()}, {"title", "before"}});
            s.both();
            second.set(trip, "trip", {{"title", "after"}});
            s.both();
            for (Party *party : {&s.owner, &s.other}) {
                ++tried;
                overruled += party->shown("trip", trip, "title") == Value("after") ? 0 : 1;
            }
            // a clock far ahead does not take ours along
            s.owner.set(trip, "trip", {{"title", "own"}});
            const auto own =
                s.owner.number("SELECT max(hlc) FROM entry JOIN stream ON stream.id = entry.stream "
                               "WHERE own = 1");
            CHECK((own >> 16) < toMillis(s.owner.home.clock.now().instant) + 86'400'000);
        }
    }
    row(20,
        std::to_string(tried) + " edits over 5 wrong clocks, " + std::to_string(overruled) + " overruled");
    CHECK(overruled == 0);
}

TEST_CASE("row 21: two edits of one field: both shown, one winner everywhere, settled by an entry")
{
    Shared s;
    const Id trip = s.owner.home.ids.next();
    s.owner.set(trip, "trip", {{"rig", s.rig.text()}, {"title", "first"}});
    s.both();
    s.owner.set(trip, "trip", {{"title", "owner's"}});
    s.other.set(trip, "trip", {{"title", "other's"}});
    s.both();
    for (Party *party : {&s.owner, &s.other}) {
        const auto conflicts = conflictsOf(party->book(), s.rig).value();
        REQUIRE(conflicts.size() == 1);
        REQUIRE(conflicts[0].fields.size() == 1);
        CHECK(conflicts[0].fields[0].versions.size() == 2);
        CHECK(conflicts[0].fields[0].shown == s.owner.shown("trip", trip, "title"));
    }
    CHECK(s.owner.shown("trip", trip, "title") == s.other.shown("trip", trip, "title"));
    CHECK(resolveConflict(s.other.book(), trip, {{"note", "x"}}, person).error().code == Errc::NotFound);
    REQUIRE(resolveConflict(s.other.book(), trip, {{"title", "agreed"}}, person));
    s.both();
    for (Party *party : {&s.owner, &s.other}) {
        CHECK(conflictsOf(party->book(), s.rig).value().empty());
        CHECK(party->shown("trip", trip, "title") == Value("agreed"));
    }
    row(21, "2 of 2 devices show both, the same winner, and none once settled");
}

TEST_CASE("row 22: an edit beside a deletion: it stays everywhere")
{
    Shared s;
    const Id trip = s.owner.home.ids.next();
    s.owner.set(trip, "trip", {{"rig", s.rig.text()}, {"title", "first"}});
    s.both();
    s.owner.set(trip, "trip", {{"rig", Value()}, {"title", Value()}});
    s.other.set(trip, "trip", {{"title", "kept"}});
    s.both();
    int kept = 0;
    for (Party *party : {&s.owner, &s.other}) {
        kept += party->shown("trip", trip, "title") == Value("kept") ? 1 : 0;
        CHECK(conflictsOf(party->book(), Id{}).value().size() == 1);
    }
    row(22, std::to_string(kept) + " of 2 devices keep it and say so");
    CHECK(kept == 2);
}

TEST_CASE("row 23: a pass beside attention: attention until a person settles it")
{
    int passed = 0;
    int tried = 0;
    for (const bool passLast : {true, false}) {
        Shared s;
        const Id mark = s.owner.home.ids.next();
        s.owner.set(mark, "mark", {{"rig", s.rig.text()}, {"state", "could_not_look"}});
        s.both();
        Party &passes = passLast ? s.other : s.owner;
        Party &attends = passLast ? s.owner : s.other;
        attends.set(mark, "mark", {{"state", "attention"}});
        passes.home.clock.advance(std::chrono::hours(passLast ? 20 : -20));
        passes.set(mark, "mark", {{"state", "pass"}});
        s.both();
        for (Party *party : {&s.owner, &s.other}) {
            ++tried;
            passed += party->shown("mark", mark, "state") == Value("attention") ? 0 : 1;
            CHECK(conflictsOf(party->book(), s.rig).value().size() == 1);
        }
        REQUIRE(resolveConflict(s.owner.book(), mark, {{"state", "pass"}}, person));
        s.both();
        CHECK(s.other.shown("mark", mark, "state") == Value("pass"));
    }
    row(23, std::to_string(tried) + " views, " + std::to_string(passed) + " passed by themselves");
    CHECK(passed == 0);
}
