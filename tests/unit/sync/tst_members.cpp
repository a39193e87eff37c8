// SPDX-License-Identifier: Apache-2.0
// Who belongs to a rig: any order of the records says the same; revocation beats enrollment; owners stay.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "support/party.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

std::string rolesIn(const RigMembers &members)
{
    std::string text;
    for (const auto &[device, member] : members.members)
        text +=
            device.shortText() + ":" + std::string(member.role() ? slugOf(*member.role()) : "revoked") + " ";
    return text;
}

std::vector<ControlRecord> recordsOf(Party &party, const Id &rig)
{
    const RigMembers members = membersOf(party.book(), rig).value();
    std::vector<ControlRecord> all = members.effective;
    all.insert(all.end(), members.idle.begin(), members.idle.end());
    return all;
}

} // namespace

TEST_CASE("two owners who revoke each other, and enroll beside it: one answer, at least one owner")
{
    Party a("a");
    Party b("b");
    Party c("c");
    const Id rig = a.addRig();
    MemoryStore store;
    REQUIRE(shareRig(a.book(), a.keys, rig));
    a.enroll(b, rig, SyncRole::Owner);
    a.meet(store);
    b.meet(store);
    // without knowing of each other
    REQUIRE(revokeDevice(a.book(), a.keys, rig, b.keys.device.deviceId(), "lost"));
    REQUIRE(revokeDevice(b.book(), b.keys, rig, a.keys.device.deviceId(), "lost"));
    b.enroll(c, rig, SyncRole::Helper);
    a.meet(store);
    b.meet(store);
    a.meet(store);
    const Hash root = sharedRigs(a.book()).value().front().second;
    auto records = recordsOf(a, rig);
    CHECK(records.size() >= 6);
    const RigMembers wanted = membersFrom(rig, root, records);
    CHECK(wanted.owners() == 1);
    std::mt19937 rng(7);
    for (int i = 0; i < 200; ++i) {
        std::shuffle(records.begin(), records.end(), rng);
        REQUIRE(rolesIn(membersFrom(rig, root, records)) == rolesIn(wanted));
    }
    CHECK(rolesIn(membersOf(b.book(), rig).value()) == rolesIn(wanted));
}

TEST_CASE("a revoked owner cannot date back what it enrolls")
{
    Party a("a");
    Party b("b");
    Party evil("evil");
    const Id rig = a.addRig();
    MemoryStore store;
    REQUIRE(shareRig(a.book(), a.keys, rig));
    a.enroll(b, rig, SyncRole::Owner);
    a.meet(store);
    b.meet(store);
    REQUIRE(revokeDevice(a.book(), a.keys, rig, b.keys.device.deviceId(), "sold"));
    // b has not heard of it, or says so
    b.enroll(evil, rig, SyncRole::Owner);
    b.meet(store);
    a.meet(store);
    const RigMembers members = membersOf(a.book(), rig).value();
    CHECK(members.find(evil.keys.device.deviceId()) == nullptr);
    CHECK_FALSE(members.find(b.keys.device.deviceId())->role());
}

TEST_CASE("the last owner can neither be revoked nor made less")
{
    Party a("a");
    Party b("b");
    const Id rig = a.addRig();
    REQUIRE(shareRig(a.book(), a.keys, rig));
    a.enroll(b, rig, SyncRole::Helper);
    CHECK(revokeDevice(a.book(), a.keys, rig, a.keys.device.deviceId(), "").error().code == Errc::Conflict);
    CHECK(enrollDevice(a.book(), a.keys, rig,
                       {a.keys.device.publicKey(), a.keys.pair.publicKey(), "a", SyncRole::Viewer, ""})
              .error()
              .code == Errc::Conflict);
    CHECK(revokeDevice(b.book(), b.keys, rig, a.keys.device.deviceId(), "").error().code ==
          Errc::Unsupported);
}

TEST_CASE("what was written under an earlier role stays; what comes under the new one is judged by it")
{
    Shared s(SyncRole::Owner);
    const Id before = s.owner.home.ids.next();
    const Id after = s.owner.home.ids.next();
    s.other.set(before, "acceptance", {{"rig", s.rig.text()}, {"reason", "early"}});
    s.both();
    REQUIRE(enrollDevice(
        s.owner.book(), s.owner.keys, s.rig,
        {s.other.keys.device.publicKey(), s.other.keys.pair.publicKey(), "other", SyncRole::Helper, ""}));
    s.both();
    s.other.set(after, "acceptance", {{"rig", s.rig.text()}, {"reason", "late"}});
    s.both();
    for (Party *party : {&s.owner, &s.other}) {
        CHECK(party->shown("acceptance", before, "reason") == Value("early"));
        CHECK(party->shown("acceptance", after, "reason").isNull());
        CHECK(asideOf(party->book(), s.rig).value().size() == 1);
    }
}

TEST_CASE("what each role may append")
{
    const Id rig = derivedId("rig", "", "");
    const auto entry = [&](const std::string &type, Value::Map fields) {
        Entry e;
        e.entity = type == "rig" ? rig : derivedId("e", "", "");
        e.type = type;
        e.fields = std::move(fields);
        return e;
    };
    const auto may = [&](SyncRole role, const Entry &e) { return !outOfRole(role, rig, e); };
    const Entry mark = entry("mark", {{"state", "pass"}});
    const Entry acceptance = entry("acceptance", {});
    const Entry gas = entry("mend", {{"licensed", true}});
    const Entry certified = entry("mend", {{"licensed", true}, {"certificate", "G-1"}});
    const Entry name = entry("rig", {{"name", "x"}});
    const Entry alien = entry("trip", {{"rig", derivedId("other", "", "").text()}});
    for (const SyncRole role : {SyncRole::Owner, SyncRole::Helper, SyncRole::Technician, SyncRole::Viewer}) {
        CHECK(may(role, mark) == (role != SyncRole::Viewer));
        CHECK(may(role, acceptance) == (role == SyncRole::Owner));
        CHECK(may(role, gas) == (role == SyncRole::Owner || role == SyncRole::Helper));
        CHECK(may(role, certified) == (role != SyncRole::Viewer));
        CHECK(may(role, name) == (role == SyncRole::Owner || role == SyncRole::Helper));
        CHECK_FALSE(may(role, alien));
        CHECK(syncRoleOf(slugOf(role)) == role);
    }
}
