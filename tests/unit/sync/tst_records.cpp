// SPDX-License-Identifier: Apache-2.0
// Many records, and records that mean harm: bounded in number and in the work they cause. Work is counted in
// steps, not in time.
#include <doctest/doctest.h>

#include "base/text.hpp"
#include "support/party.hpp"
#include "sync/record_graph.hpp"
#include "sync/segment.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// Unsigned, as the evaluation takes them; named by a number.
ControlRecord numbered(const Id &rig, const DeviceKey &signer, std::size_t number)
{
    ControlRecord record;
    record.hash = blake2b(std::to_string(number));
    record.space = rig;
    record.signer = signer.deviceId();
    record.publicKey = signer.publicKey();
    record.counter = static_cast<std::int64_t>(number) + 1;
    record.prev = number == 0 ? Hash{} : blake2b(std::to_string(number - 1));
    record.action = "of tomorrow";
    record.body = Value::Map{};
    return record;
}

ControlRecord founding(const Id &rig, const DeviceKey &signer)
{
    ControlRecord root = numbered(rig, signer, 0);
    root.action = "found";
    root.body = Value::Map{{"seal", Bytes{std::string(32, 's')}}, {"epoch", Bytes{std::string(8, '1')}}};
    return root;
}

Value::Map enrolling(const DeviceKey &key, const char *role)
{
    return {{"key", Bytes{key.publicKey()}}, {"seal", Bytes{std::string(32, 's')}}, {"role", role}};
}

const DeviceKey first = DeviceKey::fromSeed(std::string(32, 'f'));
const Id someRig = derivedId("rig", "", "");

// A record as a member leaves it at a store.
void leave(MemoryStore &store, const Party &party, const Id &rig, int number, const std::string &filler = "")
{
    ControlRecord record;
    record.space = rig;
    record.counter = 1;
    record.at = timeAt("2026-03-14T09:00:00Z");
    record.action = "epoch";
    record.body = Value::Map{{"epoch", Bytes{std::string(8, 'x')}}, {"n", number}, {"filler", filler}};
    const SignedControl made = signControl(party.keys.device, record);
    REQUIRE(store.publish(rigFolder(rig) + "/c/" + made.record.signer.text() + "/000000000001-" +
                              made.record.hash.text().substr(0, 20) + ".ctl",
                          made.bytes));
}

} // namespace

TEST_CASE("a chain of 100,000 records: looked at a few times each, however deep")
{
    constexpr std::size_t count = 100'000;
    std::vector<ControlRecord> records{founding(someRig, first)};
    for (std::size_t n = 1; n < count; ++n) {
        records.push_back(numbered(someRig, first, n));
        records.back().seen = {records[n - 1].hash};
    }
    RecordGraph graph(records);
    REQUIRE(graph.size() == count);
    CHECK(graph.at(0).hash == records.front().hash);
    CHECK(graph.at(count - 1).hash == records.back().hash);
    CHECK(graph.steps() <= 5 * count);
    const auto before = graph.steps();
    CHECK(graph.knows(count - 1, 0));
    CHECK_FALSE(graph.knows(0, count - 1));
    CHECK(graph.steps() - before <= 2 * count);
    CHECK(graph.leadsTo(10, count - 1));
    CHECK_FALSE(graph.leadsTo(count - 1, 10));
    const RigMembers members = membersFrom(someRig, records.front().hash, records);
    CHECK(members.owners() == 1);
    CHECK(members.effective.size() == 1);
    CHECK(members.idle.size() == count - 1);
}

TEST_CASE("records that each name 64 others cost their links, no more")
{
    constexpr std::size_t count = 5000;
    std::vector<ControlRecord> records{founding(someRig, first)};
    std::size_t links = 0;
    for (std::size_t n = 1; n < count; ++n) {
        records.push_back(numbered(someRig, first, n));
        for (std::size_t back = 1; back <= maxSeen && back <= n; ++back, ++links)
            records.back().seen.push_back(records[n - back].hash);
    }
    RecordGraph graph(records);
    CHECK(graph.steps() <= 2 * links + 3 * count);
    for (std::size_t place = 0; place < count; ++place)
        REQUIRE(graph.at(place).hash == records[place].hash);
    const auto before = graph.steps();
    CHECK(graph.knows(count - 1, 1));
    CHECK(graph.steps() - before <= links);
}

TEST_CASE("records of a circle, which no hash can make, are left out and stop nothing")
{
    std::vector<ControlRecord> records{founding(someRig, first), numbered(someRig, first, 1),
                                       numbered(someRig, first, 2)};
    records[1].seen = {records[2].hash};
    records[2].seen = {records[1].hash};
    records[1].prev = records[2].hash;
    records[2].prev = records[1].hash;
    const RigMembers members = membersFrom(someRig, records[0].hash, records);
    CHECK(members.effective.size() == 1);
    CHECK(members.idle.empty());
}

TEST_CASE("an enrollment counts after a revocation that it knows of, also through others; not beside it")
{
    const DeviceKey second = DeviceKey::fromSeed(std::string(32, 's'));
    std::vector<ControlRecord> records{founding(someRig, first)};
    const auto add = [&](const char *action, Value::Map body, std::vector<Hash> seen) {
        records.push_back(numbered(someRig, first, records.size()));
        records.back().action = action;
        records.back().body = Value(std::move(body));
        records.back().seen = std::move(seen);
        return records.back().hash;
    };
    const Hash enrolled = add("enroll", enrolling(second, "helper"), {records[0].hash});
    const Hash revoked =
        add("revoke", {{"device", Bytes{std::string(second.deviceId().view())}}}, {enrolled});
    const Hash between = add("of tomorrow", {}, {revoked});
    const auto roleNow = [&] {
        const RigMembers members = membersFrom(someRig, records[0].hash, records);
        return members.find(second.deviceId())->role();
    };
    CHECK_FALSE(roleNow());
    const Hash beside = add("of tomorrow", {}, {enrolled});
    const Hash further = add("of tomorrow", {}, {beside}); // deeper than the revocation, and ignorant of it
    const Hash ignorant = add("enroll", enrolling(second, "viewer"), {further});
    CHECK_FALSE(roleNow());
    add("enroll", enrolling(second, "technician"), {between, ignorant});
    CHECK(roleNow() == SyncRole::Technician);
}

TEST_CASE("what a member without the right leaves by the hundred does not hinder an owner's next record")
{
    Shared s(SyncRole::Viewer);
    for (int n = 0; n < 300; ++n)
        leave(s.store, s.other, s.rig, n);
    s.owner.meet(s.store);
    CHECK(s.owner.number("SELECT count(*) FROM control") == 302);
    Party third("third");
    s.owner.enroll(third, s.rig, SyncRole::Helper);
    const RigMembers members = membersOf(s.owner.book(), s.rig).value();
    CHECK(members.effective.size() == 3);
    CHECK(members.effective.back().seen == std::vector<Hash>{members.effective[1].hash});
    s.owner.meet(s.store);
    CHECK(third.meet(s.store).unopened == 0);
    CHECK(membersOf(third.book(), s.rig).value().find(third.keys.device.deviceId()) != nullptr);
}

TEST_CASE("of one device 4,096 records and 16 MiB of them are taken, of strangers none")
{
    Shared s(SyncRole::Viewer);
    REQUIRE(s.owner.book().db().exec("PRAGMA synchronous = OFF"));
    Party stranger("stranger");
    for (int n = 0; n < 4200; ++n)
        leave(s.store, s.other, s.rig, n);
    for (int n = 0; n < 100; ++n)
        leave(s.store, stranger, s.rig, n);
    const auto before = s.owner.number("SELECT count(*) FROM control");
    s.owner.meet(s.store);
    CHECK(s.owner.number("SELECT count(*) FROM control") ==
          before + static_cast<std::int64_t>(maxControlsADevice));
    CHECK(s.owner.meet(s.store).bytesRead == 0);

    Shared large(SyncRole::Viewer);
    for (int n = 0; n < 80; ++n)
        leave(large.store, large.other, large.rig, n, std::string(250'000, 'x'));
    large.owner.meet(large.store);
    const auto kept = large.owner.number("SELECT sum(length(bytes)) FROM control");
    CHECK(kept > 16'000'000);
    CHECK(kept < static_cast<std::int64_t>(maxControlBytesADevice + maxControlBytes) + 10'000);
}

TEST_CASE("what would be too large to be read is not signed; adopting thousands is done in parts")
{
    Shared s(SyncRole::Helper);
    Act act;
    act.by = "somebody";
    for (int i = 0; i < 3000; ++i)
        act.changes.push_back({s.other.home.ids.next(), "acceptance", {{"rig", s.rig.text()}}});
    REQUIRE(s.other.book().record(act));
    s.other.meet(s.store);
    CHECK(s.owner.meet(s.store).aside == 3000);
    std::vector<EntryId> all;
    for (const SetAside &item : asideOf(s.owner.book(), s.rig).value())
        all.push_back(item.entry.id);
    REQUIRE(adoptEntries(s.owner.book(), s.owner.keys, s.rig, all));
    CHECK(asideOf(s.owner.book(), s.rig).value().empty());
    s.owner.meet(s.store);
    CHECK(s.other.meet(s.store).aside == 0);

    const auto before = s.owner.number("SELECT count(*) FROM control");
    const auto refused = enrollDevice(s.owner.book(), s.owner.keys, s.rig,
                                      {first.publicKey(), SealPair::of(first).publicKey(),
                                       std::string(maxControlBytes, 'n'), SyncRole::Viewer, ""});
    CHECK(refused.error().code == Errc::OutOfRange);
    CHECK(s.owner.number("SELECT count(*) FROM control") == before);
    CHECK(membersOf(s.owner.book(), s.rig));
}

TEST_CASE("strangers' files of entries: read until there is no room, and the exchange ends")
{
    Shared s;
    REQUIRE(s.owner.book().db().exec("PRAGMA synchronous = OFF"));
    const Keys stranger(DeviceKey::fromSeed(std::string(32, 'x')));
    StreamId stream;
    stream.device = stranger.device.deviceId();
    Entry entry;
    entry.id = {stream, 1};
    entry.act = derivedId("act", "", "");
    entry.entity = derivedId("entity", "", "");
    entry.type = "trip";
    entry.at = timeAt("2026-03-14T09:00:00Z");
    for (int n = 0; n < 1100; ++n) {
        entry.fields = {{"rig", s.rig.text()}, {"note", toHex(randomBytes(1)) + std::string(100'000, 'x')}};
        const auto sealed = sealSegment(stranger.device, Secret::random(), {{}, s.rig, stream, 1, {}},
                                        {{entry, canonicalBytes(entry)}}, entry.at)
                                .value();
        REQUIRE(s.store.publish(rigFolder(s.rig) + "/s/" + toHex(stream.bytes()) + "/000000000001-" +
                                    sealed.facts.hash.text().substr(0, 20) + ".seg",
                                sealed.bytes));
    }
    CHECK(s.owner.meet(s.store).unopened == 1000);
    CHECK(s.owner.meet(s.store).bytesRead == 0);

    // fewer and larger: together at most 64 MiB and one file
    Shared t;
    const std::string noise = randomBytes(3'000'000);
    for (int n = 0; n < 30; ++n) {
        entry.fields = {{"rig", t.rig.text()}, {"noise", Bytes{noise}}, {"n", n}};
        const auto sealed = sealSegment(stranger.device, Secret::random(), {{}, t.rig, stream, 1, {}},
                                        {{entry, canonicalBytes(entry)}}, entry.at)
                                .value();
        REQUIRE(t.store.publish(rigFolder(t.rig) + "/s/" + toHex(stream.bytes()) + "/000000000001-" +
                                    sealed.facts.hash.text().substr(0, 20) + ".seg",
                                sealed.bytes));
    }
    t.owner.meet(t.store);
    const auto kept = t.owner.number("SELECT sum(length(bytes)) FROM segment WHERE opened = 0");
    CHECK(kept >= 64 * 1024 * 1024);
    CHECK(kept < 64 * 1024 * 1024 + 3'100'000);
    CHECK(t.owner.meet(t.store).bytesRead == 0);
}
