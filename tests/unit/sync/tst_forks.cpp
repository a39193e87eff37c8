// SPDX-License-Identifier: Apache-2.0
// Streams that part, and entries that others carry or forge under a name that is not theirs.
#include <doctest/doctest.h>

#include "base/text.hpp"
#include "logbook/check.hpp"
#include "support/party.hpp"
#include "sync/segment.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

void putBack(Party &party, const std::string &copy)
{
    party.home.close();
    for (const char *ending : {"", "-wal", "-shm"})
        std::filesystem::remove(party.home.file() + ending);
    spill(party.home.file(), copy);
}

std::string copyOf(Party &party)
{
    party.home.close();
    return slurp(party.home.file());
}

Entry entryNamed(const EntryId &id, const Id &entity, const Id &rig, const std::string &title)
{
    Entry entry;
    entry.id = id;
    entry.hlc = 1'773'000'000'000LL << 16;
    entry.act = derivedId("act", title, "");
    entry.entity = entity;
    entry.type = "trip";
    entry.by = "somebody";
    entry.at = timeAt("2026-03-14T09:00:00+13:00");
    entry.fields = {{"rig", rig.text()}, {"title", title}};
    return entry;
}

// The same entry with other words until its bytes hash lower, or higher, than those given.
IncomingEntry grind(Entry entry, const std::string &than, bool lower)
{
    for (int n = 0;; ++n) {
        entry.fields["title"] = "forged " + std::to_string(n);
        const std::string bytes = canonicalBytes(entry);
        if ((blake2b(bytes) < blake2b(than)) == lower)
            return {entry, bytes};
    }
}

// A file that `party` signs in a stream of its own.
SealedSegment signedBy(Party &party, const Id &rig, const std::vector<IncomingEntry> &entries)
{
    StreamId stream;
    stream.device = party.keys.device.deviceId();
    stream.incarnation.fill(7);
    const RigKeys open = openKeys(membersOf(party.book(), rig).value(), party.keys);
    return sealSegment(party.keys.device, open.all.at(open.latest), {{}, rig, stream, 1, {}}, entries,
                       timeAt("2026-03-14T09:00:00+13:00"))
        .value();
}

void leave(MemoryStore &store, const SealedSegment &sealed)
{
    REQUIRE(store.publish(rigFolder(sealed.facts.space) + "/s/" + toHex(sealed.facts.stream.bytes()) +
                              "/000000000001-" + sealed.facts.hash.text().substr(0, 20) + ".seg",
                          sealed.bytes));
}

std::string bytesOf(Party &party, const EntryId &id)
{
    auto rows = party.book()
                    .db()
                    .prepare("SELECT bytes FROM entry JOIN stream ON stream.id = stream WHERE name = ? AND "
                             "seq = ?")
                    .value();
    rows.bindBytes(1, id.stream.bytes());
    rows.bind(2, id.seq);
    REQUIRE(rows.step().value());
    return rows.bytes(0);
}

} // namespace

TEST_CASE("a stream that is left behind stands without the entries of other rigs that lay between")
{
    Shared s;
    const Id ours = s.owner.home.ids.next();
    s.other.set(s.owner.home.ids.next(), "trip", {{"rig", derivedId("another rig", "", "").text()}});
    s.other.set(ours, "trip", {{"rig", s.rig.text()}, {"title", "before"}});
    s.other.meet(s.store);
    const std::string copy = copyOf(s.other);
    s.other.set(ours, "trip", {{"title", "one way"}});
    s.other.meet(s.store);
    putBack(s.other, copy);
    s.other.set(ours, "trip", {{"title", "the other way"}});
    CHECK(s.other.meet(s.store).forked);
    s.owner.meet(s.store);
    for (Party *party : {&s.owner, &s.other})
        CHECK(checkLogbook(party->book(), true).value().faults.empty());
    CHECK(s.other.number("SELECT count(*) FROM entry WHERE segment IS NULL") == 1);
    // and the guard against changes is back
    CHECK_FALSE(s.other.book().db().exec("UPDATE entry SET hash = zeroblob(32)"));
    CHECK_FALSE(s.other.book().db().exec("DELETE FROM entry"));
}

TEST_CASE("a member that is no owner cannot push another one's entry aside under its name")
{
    for (const bool forgedFirst : {true, false}) {
        Shared s;
        Party third("third");
        s.owner.enroll(third, s.rig, SyncRole::Viewer);
        s.owner.meet(s.store);
        third.meet(s.store);
        const Id trip = s.owner.home.ids.next();
        const EntryId id = s.other.set(trip, "trip", {{"rig", s.rig.text()}, {"title", "genuine"}});
        const IncomingEntry forged = grind(entryNamed(id, trip, s.rig, "forged"), bytesOf(s.other, id), true);
        MemoryStore stick;
        leave(stick, signedBy(third, s.rig, {forged}));
        if (!forgedFirst)
            s.other.meet(s.store);
        s.owner.meet(stick);
        s.other.meet(s.store);
        s.owner.meet(s.store);
        CHECK(s.owner.shown("trip", trip, "title") == Value("genuine"));
        CHECK(s.owner.meet(stick).unopened == 1);
        CHECK_FALSE(s.other.meet(stick).forked);
        CHECK(s.other.shown("trip", trip, "title") == Value("genuine"));
    }
}

TEST_CASE("of two entries with one name that of the device itself stands, whichever came first")
{
    Shared s;
    const Id trip = s.owner.home.ids.next();
    const EntryId id = s.other.set(trip, "trip", {{"rig", s.rig.text()}, {"title", "genuine"}});
    s.other.meet(s.store);
    s.owner.meet(s.store);
    const std::string genuine = bytesOf(s.owner, id);
    SegmentFacts own{blake2b("own"), s.rig, id.stream, 1, {}};
    SegmentFacts carried{blake2b("carried"), s.rig, s.owner.book().stream(), 1, {}};
    const auto judge = [](const KeptSegment &, const Entry &) { return std::optional<std::string>(); };
    for (const bool lower : {true, false}) {
        const IncomingEntry other = grind(entryNamed(id, trip, s.rig, "x"), genuine, lower);
        std::vector<Hash> ends;
        for (const bool carriedFirst : {true, false}) {
            TestBook fresh("fresh");
            for (const bool first : {true, false}) {
                const bool isCarried = first == carriedFirst;
                REQUIRE(receive(fresh.book(), isCarried ? carried : own, isCarried ? "c" : "o",
                                isCarried ? s.owner.keys.device.publicKey() : s.other.keys.device.publicKey(),
                                isCarried
                                    ? std::vector{other}
                                    : std::vector{IncomingEntry{entryFromBytes(genuine).value(), genuine}},
                                judge));
            }
            CHECK(thing(fresh.book().db(), "trip", trip)->doc["title"] == Value("genuine"));
            CHECK(fresh.book().db().number("SELECT count(*) FROM twin").value() == 1);
            ends.push_back(projectionNow(fresh.book()));
            CHECK(ends.back() == projectionRebuilt(fresh.book()));
        }
        CHECK(ends[0] == ends[1]);
    }
}

TEST_CASE("the same entry by two signers is judged by the one that wrote it, whichever came first")
{
    Party writer("writer");
    const Id rig = writer.addRig();
    const Id trip = writer.home.ids.next();
    const EntryId id = writer.set(trip, "trip", {{"rig", rig.text()}, {"title", "late"}});
    const std::string bytes = bytesOf(writer, id);
    const IncomingEntry incoming{entryFromBytes(bytes).value(), bytes};
    StreamId carrier;
    carrier.device = DeviceKey::fromSeed(std::string(32, 'c')).deviceId();
    const SegmentFacts own{blake2b("own"), rig, id.stream, 1, {}};
    const SegmentFacts carried{blake2b("carried"), rig, carrier, 1, {}};
    const auto judge = [&](const KeptSegment &segment, const Entry &) {
        return segment.facts.hash == own.hash ? std::optional<std::string>("revoked") : std::nullopt;
    };
    for (const bool carriedFirst : {true, false}) {
        TestBook fresh("fresh");
        for (const bool first : {true, false}) {
            const bool isCarried = first == carriedFirst;
            REQUIRE(receive(fresh.book(), isCarried ? carried : own, isCarried ? "c" : "o",
                            isCarried ? DeviceKey::fromSeed(std::string(32, 'c')).publicKey()
                                      : writer.keys.device.publicKey(),
                            {incoming}, judge));
        }
        CHECK(fresh.book().db().number("SELECT count(*) FROM aside").value() == 1);
        CHECK_FALSE(thing(fresh.book().db(), "trip", trip));
        CHECK(projectionNow(fresh.book()) == projectionRebuilt(fresh.book()));
    }
}

TEST_CASE("an owner who carries entries of our stream that we never wrote: our stream is left")
{
    Shared s;
    const Id trip = s.owner.home.ids.next();
    s.other.set(trip, "trip", {{"rig", s.rig.text()}, {"title", "known"}});
    s.other.meet(s.store);
    // from a newer backup than the one that this device was restored from
    const EntryId next{s.other.book().stream(), s.other.number("SELECT max(seq) FROM entry WHERE stream = "
                                                               "(SELECT id FROM stream WHERE own = 1)") +
                                                    1};
    const Id later = s.owner.home.ids.next();
    const Entry entry = entryNamed(next, later, s.rig, "from a backup");
    leave(s.store, signedBy(s.owner, s.rig, {{entry, canonicalBytes(entry)}}));
    CHECK(s.other.meet(s.store).forked);
    s.other.set(trip, "trip", {{"title", "goes on"}});
    s.both();
    for (Party *party : {&s.owner, &s.other}) {
        CHECK(party->shown("trip", later, "title") == Value("from a backup"));
        CHECK(party->shown("trip", trip, "title") == Value("goes on"));
        CHECK(checkLogbook(party->book(), true).value().faults.empty());
    }
    CHECK(projectionNow(s.owner.book()) == projectionNow(s.other.book()));
}

TEST_CASE("a stream that could not be left is still ours, also for the open logbook")
{
    Shared s;
    const StreamId before = s.other.book().stream();
    REQUIRE(s.other.book().db().exec("CREATE TEMP TRIGGER refuse BEFORE INSERT ON main.stream "
                                     "BEGIN SELECT RAISE(ABORT, 'the disk is full'); END"));
    CHECK_FALSE(startIncarnation(s.other.book()));
    CHECK(s.other.book().stream() == before);
    REQUIRE(s.other.book().db().exec("DROP TRIGGER refuse"));
    REQUIRE(startIncarnation(s.other.book()));
    CHECK(s.other.book().stream() != before);
    CHECK(s.other.number("SELECT count(*) FROM stream WHERE own = 1") == 1);
    // a second connection, which began before, finds the new one when it exchanges
    const StreamId now = s.other.book().stream();
    Logbook second = s.other.home.tryOpen(s.other.home.file(), false).value();
    REQUIRE(startIncarnation(s.other.book()));
    CHECK(second.stream() == now);
    REQUIRE(exchange(second, s.other.keys, s.store));
    CHECK(second.stream() == s.other.book().stream());
}
