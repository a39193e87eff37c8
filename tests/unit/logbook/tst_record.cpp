// SPDX-License-Identifier: Apache-2.0
// An act is written whole or not at all, in one stream with a clock that never goes back.
#include <doctest/doctest.h>

#include <limits>
#include <set>

#include "logbook/append.hpp"
#include "logbook/check.hpp"
#include "logbook/entry_rows.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Act actWith(const std::vector<EntityChange> &changes)
{
    Act act;
    act.by = "W. Tester";
    act.changes = changes;
    return act;
}

std::vector<StoredEntry> allEntries(Logbook &book)
{
    std::vector<StoredEntry> all;
    REQUIRE(eachStoredEntry(book.db(), [&](const StoredEntry &stored) {
        all.push_back(stored);
        return done();
    }));
    return all;
}

} // namespace

TEST_CASE("the clock for ordering: milliseconds in 48 bits, a counter that carries [KULKARNI-2014]")
{
    const Instant now = fromMillis(1000);
    CHECK(nextHlc(now, 0) == 1000LL << 16);
    CHECK(nextHlc(now, 1000LL << 16) == (1000LL << 16) + 1);
    CHECK(nextHlc(now, 2000LL << 16) == (2000LL << 16) + 1);      // the clock went back
    CHECK(nextHlc(now, (1000LL << 16) + 0xFFFF) == 1001LL << 16); // the counter is full
    CHECK(nextHlc(fromMillis(-5), 0) == 1);
}

TEST_CASE("stamps only rise, also when the machine's clock goes back for years")
{
    Walker walker;
    std::int64_t days = 1;
    for (const char *point : {"awning-locks", "spring-bars", "pull-away-lap", "chains-run"}) {
        walker.home.clock.advance(std::chrono::hours(-24 * 365 * days++));
        REQUIRE(walker.mark(passOf(point)));
    }
    std::int64_t last = 0;
    std::int64_t seq = 0;
    for (const StoredEntry &stored : allEntries(walker.book())) {
        CHECK(stored.entry.hlc > last);
        CHECK(stored.entry.id.seq == ++seq);
        last = stored.entry.hlc;
    }
    CHECK(seq == 6);
    CHECK(checkLogbook(walker.book(), true)->faults.empty());
}

TEST_CASE("what has the value already leaves no entry")
{
    TestBook home;
    const Id thing = home.ids.next();
    const Act act = actWith({{thing, "happening", {{"kind", "hail"}, {"note", ""}}}});
    CHECK(home.book().record(act)->entries == 1);
    CHECK(home.book().record(act)->entries == 0);
    CHECK(entryCount(home.book()) == 1);
    CHECK(home.book()
              .record(actWith({{thing, "happening", {{"kind", "hail"}, {"note", "as peas"}}}}))
              ->entries == 1);
    CHECK(allEntries(home.book()).back().entry.fields == Value::Map{{"note", "as peas"}});
    CHECK(home.book().record(actWith({{thing, "happening", {{"never", Value()}}}}))->entries == 0);
}

TEST_CASE("an act is whole: a change that cannot be stored takes the others with it")
{
    TestBook home;
    const double nan = std::numeric_limits<double>::quiet_NaN();
    Value deep = 1;
    for (int i = 0; i < 20; ++i)
        deep = Value::List{deep};
    for (const Value &bad : {Value(nan), Value(std::string("\xC3\x28")), deep}) {
        const auto written = home.book().record(actWith({{home.ids.next(), "happening", {{"kind", "hail"}}},
                                                         {home.ids.next(), "happening", {{"note", bad}}}}));
        REQUIRE_FALSE(written);
        CHECK(written.error().code == Errc::InvalidInput);
    }
    CHECK(entryCount(home.book()) == 0);
    CHECK(home.book().db().number("SELECT count(*) FROM thing").value() == 0);
    CHECK(home.book().record(actWith({{home.ids.next(), "happening", {{"kind", "hail"}}}}))->entries == 1);
    CHECK(checkLogbook(home.book(), true)->faults.empty());
}

TEST_CASE("who, when and where must be readable again too")
{
    TestBook home;
    Act act = actWith({{home.ids.next(), "happening", {{"kind", "hail"}}}});
    act.by = "\xFF";
    CHECK(home.book().record(act).error().code == Errc::InvalidInput);
    act.by = "W. Tester";
    act.where = GeoPoint{std::numeric_limits<double>::quiet_NaN(), 0, std::nullopt, std::nullopt};
    CHECK(home.book().record(act).error().code == Errc::InvalidInput);
    act.where = GeoPoint{91, 0, std::nullopt, std::nullopt};
    CHECK(home.book().record(act).error().code == Errc::InvalidInput);
    act.where.reset();
    act.at = LocalTime{fromMillis(400'000'000'000'000), {}}; // the year 14645
    CHECK(home.book().record(act).error().code == Errc::InvalidInput);
    CHECK(entryCount(home.book()) == 0);
}

TEST_CASE("one act, one id; a mark with a finding is three entries of it")
{
    Walker walker;
    REQUIRE(walker.mark(attentionOn("chains-condition", 3)));
    std::set<Id> acts;
    std::set<std::string> types;
    for (const StoredEntry &stored : allEntries(walker.book())) {
        if (stored.entry.scope == walker.walk.id) {
            acts.insert(stored.entry.act);
            types.insert(stored.entry.type);
        }
    }
    CHECK(acts.size() == 1);
    CHECK(types == std::set<std::string>{"finding", "look", "mark"});
}

TEST_CASE("the stream goes on after reopening; another device gets one of its own")
{
    TestBook home;
    const StreamId mine = home.book().stream();
    CHECK(home.reopened().stream() == mine);
    CHECK(mine.device == DeviceKey::fromSeed(blake2b("device test").view()).deviceId());
    home.close();
    TestBook other("other");
    auto theirs = other.tryOpen(home.file()).value();
    CHECK(theirs.stream() != mine);
    REQUIRE(theirs.record(actWith({{other.ids.next(), "happening", {{"kind", "hail"}}}})));
    CHECK(checkLogbook(theirs, true)->streams == 2);
    CHECK(checkLogbook(theirs, true)->faults.empty());
}
