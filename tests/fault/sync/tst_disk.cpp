// SPDX-License-Identifier: Apache-2.0
// Rows 2, 3, 5, 6, 25: a disk that fails, is full, or loses what was not synced, under acts, exchanges and
// migrations.
#include <doctest/doctest.h>

#include <filesystem>

#include "fault_disk.hpp"
#include "logbook/check.hpp"
#include "logbook/schema.hpp"
#include "row.hpp"
#include "support/party.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

namespace fs = std::filesystem;

// The file as it is after the power came back: what other processes shared in memory is gone.
void comeBack(const std::string &file) { fs::remove(file + "-shm"); }

struct Writer {
    explicit Writer(const std::string &path) : file(path), keys(DeviceKey::fromSeed(std::string(32, 'w'))) {}
    Result<Logbook> open() { return Logbook::open(file, {keys.device, "writer", &clock, &ids, true}); }
    std::string file;
    FixedClock clock{timeAt("2026-03-14T09:00:00+13:00")};
    CountingIds ids{"writer"};
    Keys keys;
};

Act actOf(int n)
{
    Act act;
    act.by = "somebody";
    for (int i = 0; i < 3; ++i)
        act.changes.push_back({derivedId("thing", std::to_string(n), std::to_string(i)),
                               "trip",
                               {{"rig", derivedId("rig", "", "").text()}, {"title", n}}});
    return act;
}

// Acts until something fails; how many were acknowledged.
int actsUntilFault(Logbook &book, int first)
{
    int done = 0;
    while (done < 6 && book.record(actOf(first + done)))
        ++done;
    return done;
}

// Whole acts only, all that were acknowledged, and one more at most. \returns faults.
int faultsOf(Logbook &book, int acknowledged)
{
    int faults = static_cast<int>(checkLogbook(book, true).value().faults.size());
    const auto entries = entryCount(book);
    faults += entries % 3 != 0 || entries < acknowledged * 3 || entries > acknowledged * 3 + 3 ? 1 : 0;
    return faults;
}

} // namespace

TEST_CASE("row 2: power goes at any call of an act; row 3: and again while the logbook is opened after that")
{
    constexpr int seeds = 500;
    int violations = 0;
    int cuts = 0;
    int again = 0;
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        std::mt19937 rng(seed);
        const TempFolder folder;
        Writer writer(folder.file("book.snug"));
        {
            auto made = writer.open();
            REQUIRE(made);
            REQUIRE(made->record(actOf(0)));
        }
        FaultDisk disk;
        int acknowledged = 1;
        {
            auto book = writer.open();
            REQUIRE(book);
            disk.failAfter(static_cast<std::int64_t>(rng() % 40), Fault::FromNowOn);
            acknowledged += actsUntilFault(*book, 1);
        }
        cuts += disk.failed() ? 1 : 0;
        disk.loseUnsynced(rng);
        comeBack(writer.file);
        if (seed % 2 == 0) { // recovery is cut off too
            disk.failAfter(static_cast<std::int64_t>(rng() % 12), Fault::FromNowOn);
            {
                auto book = writer.open();
                if (book)
                    acknowledged += actsUntilFault(*book, 100);
            }
            again += disk.failed() ? 1 : 0;
            disk.loseUnsynced(rng);
            comeBack(writer.file);
        }
        disk.failAfter(-1, Fault::Once);
        auto book = writer.open();
        REQUIRE_MESSAGE(book, "seed " << seed << ": " << (book ? "" : book.error().what));
        const auto entries = entryCount(*book);
        // each cut may have let through one act that was not acknowledged
        violations += checkLogbook(*book, true).value().faults.empty() ? 0 : 1;
        violations += entries % 3 != 0 || entries < acknowledged * 3 || entries > acknowledged * 3 + 6;
    }
    row(2, std::to_string(cuts) + " power cuts of " + std::to_string(seeds) + " seeds, " +
               std::to_string(violations) + " violations");
    row(3, std::to_string(again) + " of them cut off again while recovering, " + std::to_string(violations) +
               " violations");
    CHECK(violations == 0);
    CHECK(cuts >= seeds * 9 / 10);
    CHECK(again >= 100);
}

TEST_CASE("the disk of these tests does forget: acts that are never synced are lost")
{
    int lost = 0;
    for (unsigned seed = 1; seed <= 20; ++seed) {
        std::mt19937 rng(seed);
        const TempFolder folder;
        Writer writer(folder.file("book.snug"));
        {
            REQUIRE(writer.open());
        }
        FaultDisk disk;
        {
            auto book = writer.open();
            REQUIRE(book);
            REQUIRE(book->db().exec("PRAGMA synchronous = OFF"));
            REQUIRE(actsUntilFault(*book, 0) == 6);
            disk.failAfter(0, Fault::FromNowOn);
        }
        disk.loseUnsynced(rng);
        comeBack(writer.file);
        disk.failAfter(-1, Fault::Once);
        auto book = writer.open();
        lost += !book || faultsOf(*book, 6) > 0 ? 1 : 0;
    }
    CHECK(lost >= 10);
}

TEST_CASE("row 5: the n-th call to the disk or to the store fails, once or from then on, in an exchange")
{
    int points = 0;
    int faults = 0;
    for (const Fault fault : {Fault::Once, Fault::FromNowOn}) {
        bool failed = true;
        for (std::int64_t n = 0; failed; ++n) {
            REQUIRE(n < 5000);
            Shared s;
            const Id theirs = s.owner.home.ids.next();
            const Id ours = s.owner.home.ids.next();
            s.owner.set(theirs, "trip", {{"rig", s.rig.text()}, {"title", "theirs"}});
            s.owner.meet(s.store);
            s.other.set(ours, "trip", {{"rig", s.rig.text()}, {"title", "ours"}});
            s.other.home.close();
            FaultDisk disk;
            static_cast<void>(s.other.book());
            disk.failAfter(n, fault);
            const auto summary = exchange(s.other.book(), s.other.keys, s.store);
            failed = disk.failed();
            disk.failAfter(-1, Fault::Once);
            faults += failed && summary && fault == Fault::FromNowOn ? 1 : 0; // it must say so
            s.other.home.close();
            s.both();
            for (Party *party : {&s.owner, &s.other}) {
                faults += party->shown("trip", theirs, "title") == Value("theirs") ? 0 : 1;
                faults += party->shown("trip", ours, "title") == Value("ours") ? 0 : 1;
                faults += static_cast<int>(checkLogbook(party->book(), true).value().faults.size());
            }
            faults += projectionNow(s.owner.book()) == projectionNow(s.other.book()) ? 0 : 1;
            ++points;
        }
    }
    row(5, std::to_string(points) + " points of failure, " + std::to_string(faults) + " faults left");
    CHECK(faults == 0);
    CHECK(points >= 20);
}

TEST_CASE("row 6: the disk is full at twenty levels of an exchange that brings 2,000 entries")
{
    int faults = 0;
    int full = 0;
    for (int level = 0; level < 20; ++level) {
        Shared s;
        Act act;
        act.by = "somebody";
        for (int i = 0; i < 2000; ++i)
            act.changes.push_back({s.owner.home.ids.next(), "trip", {{"rig", s.rig.text()}, {"title", i}}});
        REQUIRE(s.owner.book().record(act));
        s.owner.meet(s.store);
        const auto before = entryCount(s.other.book());
        s.other.home.close();
        FaultDisk disk;
        static_cast<void>(s.other.book());
        disk.failAfter(std::int64_t{level} * level * 2, Fault::Full);
        const auto summary = exchange(s.other.book(), s.other.keys, s.store);
        full += summary ? 0 : 1;
        faults += !summary && summary.error().code == Errc::Io && !summary.error().act.empty() ? 0 : 1;
        const auto now = entryCount(s.other.book());
        faults += (now - before) % 1000 == 0 ? 0 : 1; // whole files of 1,000 or nothing
        disk.failAfter(-1, Fault::Once);              // somebody made room
        s.both();
        faults += entryCount(s.other.book()) == before + 2000 ? 0 : 1;
        faults += static_cast<int>(checkLogbook(s.other.book(), true).value().faults.size());
    }
    row(6, std::to_string(full) + " of 20 levels full, " + std::to_string(faults) + " faults left");
    CHECK(faults == 0);
    CHECK(full == 20);
}

TEST_CASE("row 25: a migration that is cut off at any call leaves the old version or the new one")
{
    // version 1 of the tables, as core/logbook/schema.cpp made it: what versions 2 and 3 added, taken away
    const TempFolder folder;
    Writer writer(folder.file("book.snug"));
    {
        auto made = writer.open();
        REQUIRE(made);
        for (int n = 0; n < 5; ++n)
            REQUIRE(made->record(actOf(n)));
        REQUIRE(made->db().exec(
            "DROP INDEX entry_by_segment; DROP INDEX meta_twice; DROP INDEX stream_twice;"
            "DROP TRIGGER entry_never_changes;"
            "ALTER TABLE entry DROP COLUMN segment; ALTER TABLE stream DROP COLUMN partial;"
            "ALTER TABLE head DROP COLUMN type; DROP TABLE space; DROP TABLE control; DROP TABLE segment;"
            "DROP TABLE aside; DROP TABLE twin; DROP TABLE wanted;"
            "CREATE TRIGGER entry_never_changes BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'an entry "
            "never changes'); END;"
            "UPDATE meta SET value = 1 WHERE key = 'projection'; PRAGMA user_version = 1;"
            "PRAGMA wal_checkpoint(TRUNCATE)"));
    }
    const std::string old = slurp(writer.file);
    int points = 0;
    int between = 0;
    int fresh = 0;
    bool failed = true;
    for (std::int64_t n = 0; failed; ++n, ++points) {
        REQUIRE(n < 2000);
        std::mt19937 rng(static_cast<unsigned>(n));
        for (const char *ending : {"-wal", "-shm"})
            fs::remove(writer.file + ending);
        spill(writer.file, old);
        FaultDisk disk;
        disk.failAfter(n, Fault::FromNowOn);
        {
            const auto book = writer.open();
        }
        failed = disk.failed();
        disk.loseUnsynced(rng);
        comeBack(writer.file);
        disk.failAfter(-1, Fault::Once);
        {
            auto db = sqlite::Connection::open(writer.file, sqlite::OpenMode::ReadWrite).value();
            const auto version = db.number("PRAGMA user_version").value();
            const auto tables = db.number("SELECT count(*) FROM sqlite_schema WHERE name IN ('space', "
                                          "'control', 'segment', 'aside', 'twin', 'wanted')")
                                    .value();
            const bool isWhole = (version == 1 && tables == 0) || (version == logbookVersion && tables == 6);
            between += isWhole ? 0 : 1;
            fresh += version == logbookVersion ? 1 : 0;
        }
        auto book = writer.open();
        REQUIRE(book);
        between += faultsOf(*book, 5);
    }
    row(25, std::to_string(points) + " points, " + std::to_string(fresh) + " after the change, " +
                std::to_string(between) + " between");
    CHECK(between == 0);
    CHECK(points >= 10);
    CHECK(fresh >= 1);
}
