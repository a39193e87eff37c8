// SPDX-License-Identifier: Apache-2.0
// Rows 7 to 9, 17, 19, 24, 26, 30: order, repetition, gaps, strangers, copies, versions, names.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <random>

#include "base/text.hpp"
#include "logbook/check.hpp"
#include "row.hpp"
#include "support/party.hpp"
#include "sync/folder_store.hpp"
#include "sync/segment.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// Three devices that wrote over each other, and everything they sent.
struct Story {
    Story() : s(SyncRole::Owner), third("third")
    {
        s.owner.enroll(third, s.rig, SyncRole::Helper);
        for (int i = 0; i < 4; ++i)
            things.push_back(s.owner.home.ids.next());
        std::mt19937 rng(11);
        for (int i = 0; i < 30; ++i) {
            Party &party = *std::array<Party *, 3>{&s.owner, &s.other, &third}.at(rng() % 3);
            party.set(things[rng() % 4], "mark",
                      {{"rig", s.rig.text()},
                       {"note", "n" + std::to_string(i)},
                       {"state", rng() % 2 ? "pass" : "attention"}});
            if (i % 3 == 0)
                party.meet(s.store);
        }
        for (int i = 0; i < 2; ++i) {
            for (Party *party : {&s.owner, &s.other, &third})
                party->meet(s.store);
        }
    }
    Shared s;
    Party third;
    std::vector<Id> things;
};

struct Piece {
    SegmentHead head;
    std::string bytes;
    std::vector<IncomingEntry> entries;
};

std::vector<Piece> piecesOf(Party &party, const Id &rig)
{
    const RigKeys keys = openKeys(membersOf(party.book(), rig).value(), party.keys);
    std::vector<Piece> pieces;
    for (const KeptSegment &kept : segmentsOf(party.book(), rig).value()) {
        Piece piece;
        piece.bytes = segmentBytes(party.book(), kept.row).value();
        piece.head = readSegmentHead(piece.bytes).value();
        piece.entries = openSegment(piece.bytes, keys.all.at(piece.head.epoch)).value();
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

ReceiveCount give(Logbook &book, const Piece &piece)
{
    return receive(book, piece.head.facts, piece.bytes, piece.head.publicKey, piece.entries,
                   [](const KeptSegment &, const Entry &) { return std::optional<std::string>(); })
        .value();
}

} // namespace

TEST_CASE("row 7: segments in random order, row 8: each one to five times")
{
    Story story;
    std::vector<Piece> pieces = piecesOf(story.s.owner, story.s.rig);
    REQUIRE(pieces.size() >= 8);
    std::mt19937 rng(3);
    Hash wanted;
    std::int64_t repeats = 0;
    std::int64_t changes = 0;
    constexpr int orders = 300;
    for (int order = 0; order < orders; ++order) {
        std::shuffle(pieces.begin(), pieces.end(), rng);
        TestBook fresh("fresh " + std::to_string(order));
        REQUIRE(fresh.book().db().exec("PRAGMA synchronous = OFF"));
        for (const Piece &piece : pieces) {
            give(fresh.book(), piece);
            const auto before = fresh.book().db().number("SELECT total_changes()").value();
            for (std::uint64_t i = rng() % 5; i > 0; --i, ++repeats)
                changes += give(fresh.book(), piece).fresh;
            changes += fresh.book().db().number("SELECT total_changes()").value() - before;
        }
        const Hash hash = projectionNow(fresh.book());
        wanted = order == 0 ? hash : wanted;
        REQUIRE(hash == wanted);
    }
    CHECK(wanted == projectionNow(story.s.owner.book()));
    row(7,
        std::to_string(orders) + " orders of " + std::to_string(pieces.size()) + " segments, 0 divergences");
    row(8, std::to_string(repeats) + " repeated deliveries, " + std::to_string(changes) + " rows changed");
    CHECK(changes == 0);
}

TEST_CASE("row 9: a segment missing in the middle: the rest counts, the gap is told, later it closes")
{
    int gaps = 0;
    for (int missing = 1; missing <= 5; ++missing) {
        Shared s;
        std::vector<Id> trips;
        for (int i = 0; i < 6; ++i) {
            trips.push_back(s.owner.home.ids.next());
            s.owner.set(trips.back(), "trip", {{"rig", s.rig.text()}, {"title", i}});
            s.owner.meet(s.store);
        }
        const std::string counter = "00000000000" + std::to_string(missing + 1) + "-";
        std::string name;
        for (const auto &[file, bytes] : s.store.files)
            name = file.find("/s/") != std::string::npos && file.find(counter) != std::string::npos ? file
                                                                                                    : name;
        REQUIRE_FALSE(name.empty());
        const std::string bytes = s.store.files.at(name);
        s.store.files.erase(name);
        const auto summary = s.other.meet(s.store);
        gaps += static_cast<int>(summary.gaps);
        CHECK(summary.gaps == 1);
        for (int i = 0; i < 6; ++i)
            CHECK(s.other.shown("trip", trips[static_cast<std::size_t>(i)], "title").isNull() ==
                  (i == missing - 1));
        s.owner.meet(s.store); // puts it there again
        CHECK(s.other.meet(s.store).gaps == 0);
        CHECK(projectionNow(s.other.book()) == projectionNow(s.owner.book()));
    }
    row(9, "5 gaps, " + std::to_string(gaps) + " told, 5 closed");
}

TEST_CASE("row 17: signed by one who is unknown, revoked, or has not the role")
{
    Shared s(SyncRole::Helper);
    Party stranger("stranger");
    const Id a = s.owner.home.ids.next();
    // unknown: shares the same rig id by itself, and leaves its files here
    stranger.set(s.rig, "rig", {{"name", "taken over"}});
    REQUIRE(shareRig(stranger.book(), stranger.keys, s.rig));
    stranger.meet(s.store);
    // out of role
    s.other.set(a, "acceptance", {{"rig", s.rig.text()}, {"reason", "hurry"}});
    s.both();
    CHECK(s.owner.shown("acceptance", a, "reason").isNull());
    // revoked
    REQUIRE(revokeDevice(s.owner.book(), s.owner.keys, s.rig, s.other.keys.device.deviceId(), "lost"));
    const Id b = s.owner.home.ids.next();
    const EntryId late = s.other.set(b, "trip", {{"rig", s.rig.text()}, {"title", "late"}});
    s.other.meet(s.store);
    const auto summary = s.owner.meet(s.store);
    CHECK(s.owner.shown("rig", s.rig, "name") == Value("rig"));
    CHECK(s.owner.shown("trip", b, "title").isNull());
    const auto aside = asideOf(s.owner.book(), s.rig).value();
    row(17, "3 kinds of signer, 0 applied, " + std::to_string(aside.size()) + " shown aside, " +
                std::to_string(summary.unopened) + " kept closed");
    CHECK(aside.size() == 2);
    CHECK(summary.unopened >= 1);
    // shown, and taken over by an owner
    REQUIRE(adoptEntries(s.owner.book(), s.owner.keys, s.rig, {late}));
    CHECK(s.owner.shown("trip", b, "title") == Value("late"));
    CHECK(projectionNow(s.owner.book()) == projectionRebuilt(s.owner.book()));
}

TEST_CASE("row 17: what was applied before the revocation arrived is set aside again")
{
    Shared s(SyncRole::Helper);
    Party third("third");
    s.owner.enroll(third, s.rig, SyncRole::Helper);
    s.both();
    const Id trip = s.owner.home.ids.next();
    MemoryStore stick;
    s.other.set(trip, "trip", {{"rig", s.rig.text()}, {"title", "late"}});
    s.other.meet(stick);
    third.meet(s.store);
    third.meet(stick);
    CHECK(third.shown("trip", trip, "title") == Value("late"));
    REQUIRE(revokeDevice(s.owner.book(), s.owner.keys, s.rig, s.other.keys.device.deviceId(), "sold"));
    s.owner.meet(s.store);
    third.meet(s.store);
    CHECK(third.shown("trip", trip, "title").isNull());
    CHECK(asideOf(third.book(), s.rig).value().size() == 1);
    CHECK(checkLogbook(third.book(), true).value().faults.empty());
}

TEST_CASE("row 19: a restored copy goes on with numbers that are taken: both ways are kept")
{
    constexpr int copies = 10;
    int lost = 0;
    for (int n = 1; n <= copies; ++n) {
        Shared s;
        s.other.home.close();
        const std::string file = s.other.home.file();
        const std::string copy = slurp(file);
        std::vector<Id> trips;
        for (int i = 0; i < 2 * n; ++i)
            trips.push_back(s.owner.home.ids.next());
        for (int i = 0; i < n; ++i)
            s.other.set(trips[static_cast<std::size_t>(i)], "trip", {{"rig", s.rig.text()}, {"title", i}});
        s.other.meet(s.store);
        s.other.home.close();
        for (const char *ending : {"", "-wal", "-shm"})
            std::filesystem::remove(file + ending);
        spill(file, copy);
        for (int i = n; i < 2 * n; ++i)
            s.other.set(trips[static_cast<std::size_t>(i)], "trip", {{"rig", s.rig.text()}, {"title", i}});
        CHECK(s.other.meet(s.store).forked);
        CHECK_FALSE(s.other.meet(s.store).forked);
        s.owner.meet(s.store);
        for (Party *party : {&s.owner, &s.other}) {
            for (int i = 0; i < 2 * n; ++i)
                lost += party->shown("trip", trips[static_cast<std::size_t>(i)], "title") == Value(i) ? 0 : 1;
            CHECK(checkLogbook(party->book(), true).value().faults.empty());
        }
        CHECK(projectionNow(s.owner.book()) == projectionNow(s.other.book()));
    }
    row(19, std::to_string(copies) + " forks found, " + std::to_string(lost) + " entries lost");
    CHECK(lost == 0);
}

TEST_CASE("row 19: both ways of a copy were sent before they met: the same one stands everywhere")
{
    Shared s;
    Party third("third");
    s.owner.enroll(third, s.rig, SyncRole::Helper);
    s.both();
    third.meet(s.store);
    const Id trip = s.owner.home.ids.next();
    s.other.home.close();
    const std::string copy = slurp(s.other.home.file());
    s.other.set(trip, "trip", {{"rig", s.rig.text()}, {"title", "one way"}});
    MemoryStore stick;
    s.other.meet(stick);
    s.other.home.close();
    spill(s.other.home.file(), copy);
    s.other.set(trip, "trip", {{"rig", s.rig.text()}, {"title", "the other way"}});
    s.other.meet(s.store);
    // two devices hear of the two ways in two orders
    s.owner.meet(s.store);
    s.owner.meet(stick);
    third.meet(stick);
    third.meet(s.store);
    for (Party *party : {&s.owner, &third}) {
        CHECK(party->number("SELECT count(*) FROM twin") == 1);
        CHECK(checkLogbook(party->book(), true).value().faults.empty());
    }
    CHECK(projectionNow(s.owner.book()) == projectionNow(third.book()));
    // the device itself finds out, begins a new stream, and ends alike
    s.other.meet(stick);
    s.other.meet(s.store);
    s.owner.meet(s.store);
    CHECK(projectionNow(s.other.book()) == projectionNow(s.owner.book()));
}

TEST_CASE("row 24: what an old version does not know is kept, carried on and read by a new one")
{
    Shared s;
    const Id thing = s.owner.home.ids.next();
    s.owner.set(thing, "thing_of_tomorrow",
                {{"rig", s.rig.text()},
                 {"shape", Value::Map{{"a", Value::List{1, 2.5, Bytes{"x"}}}}},
                 {"state", "new"}});
    s.owner.meet(s.store);
    // a file whose entries only a newer version can open
    const RigKeys keys = openKeys(membersOf(s.owner.book(), s.rig).value(), s.owner.keys);
    s.other.meet(s.store);
    MemoryStore stick; // the third device never sees the first store
    s.other.meet(stick);
    int same = 0;
    int files = 0;
    for (const auto &[name, bytes] : s.store.files) {
        if (!name.ends_with(".seg"))
            continue;
        ++files;
        const auto found = stick.files.find(name);
        same += found != stick.files.end() && found->second == bytes ? 1 : 0;
    }
    Party third("third");
    s.owner.enroll(third, s.rig, SyncRole::Viewer);
    s.owner.meet(stick);
    third.meet(stick);
    CHECK(third.shown("thing_of_tomorrow", thing, "shape") ==
          s.owner.shown("thing_of_tomorrow", thing, "shape"));
    CHECK(third.shown("thing_of_tomorrow", thing, "state") == Value("new"));
    row(24, std::to_string(files) + " files relayed, " + std::to_string(same) + " equal byte for byte");
    CHECK(same == files);
}

TEST_CASE("row 26: a device thousands of entries behind reads them once")
{
    Shared s;
    constexpr int count = 5000;
    Act act;
    act.by = "somebody";
    for (int i = 0; i < count; ++i)
        act.changes.push_back({s.owner.home.ids.next(), "trip", {{"rig", s.rig.text()}, {"title", i}}});
    REQUIRE(s.owner.book().record(act));
    s.owner.meet(s.store);
    std::int64_t payload = 0;
    for (const auto &[name, bytes] : s.store.files)
        payload += name.ends_with(".seg") ? static_cast<std::int64_t>(bytes.size()) : 0;
    const auto sent = s.store.files.size();
    const auto summary = s.other.meet(s.store);
    CHECK(summary.entriesReceived == count);
    CHECK(s.store.files.size() == sent);
    row(26, std::to_string(count) + " entries, " + std::to_string(summary.bytesRead) + " bytes read of " +
                std::to_string(payload) + " in segments, 0 files sent again");
    CHECK(summary.bytesRead * 10 <= payload * 12);
    CHECK(s.other.meet(s.store).bytesRead == 0);
}

TEST_CASE("row 30: names that lead elsewhere")
{
    const TempFolder folder;
    const TempFolder outside;
    FolderStore store(folder.path());
    std::vector<std::string> odd = {"",      "/",    "..",      "../x", "a/../../x", "/etc/passwd", "a//b",
                                    "a/",    "./a",  "a/.",     "C:/x", "a\\b",      "nul",         "con.txt",
                                    "aux/x", "lpt1", ".hidden", "a.",   "A",         "\xff"};
    for (int c = 0; c < 128; ++c) {
        const bool isFine =
            (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_' || c == '-' || c == '.' || c == '/';
        if (!isFine)
            odd.push_back(std::string("a") + static_cast<char>(c) + "b");
    }
    int taken = 0;
    for (const std::string &name : odd) {
        taken += store.publish(name, "x") ? 1 : 0;
        taken += store.read(name, 10) ? 1 : 0;
    }
    std::filesystem::create_directory_symlink(outside.path(), folder.path() / "link");
    taken += store.publish("link/x", "x") ? 1 : 0;
    row(30, std::to_string(odd.size() + 1) + " vectors, " + std::to_string(taken) + " escapes");
    CHECK(odd.size() >= 100);
    CHECK(taken == 0);
    CHECK(std::filesystem::is_empty(outside.path()));
    CHECK(std::distance(std::filesystem::directory_iterator(folder.path()), {}) == 1);
}
