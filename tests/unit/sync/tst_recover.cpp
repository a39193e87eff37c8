// SPDX-License-Identifier: Apache-2.0
// All devices are lost, printed words and a store are left.
#include <doctest/doctest.h>

#include <algorithm>

#include "logbook/check.hpp"
#include "support/party.hpp"
#include "sync/recover.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

struct Printed {
    Printed()
    {
        words = enrollPaperOwner(s.owner.book(), s.owner.keys, s.rig, "paper").value();
        s.owner.set(trip, "trip", {{"rig", s.rig.text()}, {"title", "long ago"}});
        s.owner.meet(s.store);
        root = sharedRigs(s.owner.book()).value().front().second;
    }
    Shared s;
    Id trip = s.owner.home.ids.next();
    std::string words;
    Hash root;
};

} // namespace

TEST_CASE("a new device takes the rig back by printed words, and everything that lies at the store")
{
    Printed p;
    const DeviceKey printed = keyFromWords(p.words).value();
    const auto found = rigsOwnedBy(p.s.store, printed).value();
    REQUIRE(found.size() == 1);
    CHECK(found[0].rig == p.s.rig);
    CHECK(found[0].root == p.root);
    Party fresh("fresh");
    REQUIRE(recoverRig(fresh.book(), fresh.keys, printed, found[0]));
    fresh.meet(p.s.store);
    CHECK(fresh.shown("trip", p.trip, "title") == Value("long ago"));
    CHECK(projectionNow(fresh.book()) == projectionNow(p.s.owner.book()));
    CHECK(checkLogbook(fresh.book(), true).value().faults.empty());
    // it is an owner from now on, for the old devices too
    fresh.set(p.trip, "trip", {{"title", "taken back"}});
    CHECK(fresh.meet(p.s.store).entriesSent == 1);
    p.s.owner.meet(p.s.store);
    CHECK(p.s.owner.shown("trip", p.trip, "title") == Value("taken back"));
    const RigMembers members = membersOf(p.s.owner.book(), p.s.rig).value();
    CHECK(members.find(fresh.keys.device.deviceId())->role() == SyncRole::Owner);
    CHECK(members.owners() == 3);
    REQUIRE(revokeDevice(fresh.book(), fresh.keys, p.s.rig, p.s.owner.keys.device.deviceId(), "lost"));
}

TEST_CASE("only an owner's key finds a rig; what cannot be read is passed over")
{
    Printed p;
    CHECK(rigsOwnedBy(p.s.store, p.s.owner.keys.device).value().size() == 1);
    CHECK(rigsOwnedBy(p.s.store, p.s.other.keys.device).value().empty());
    CHECK(rigsOwnedBy(p.s.store, DeviceKey::fromSeed(std::string(32, 'q'))).value().empty());
    MemoryStore empty;
    CHECK(rigsOwnedBy(empty, p.s.owner.keys.device).value().empty());
    for (const char *name : {"/c/junk/000000000001-0.ctl", "/c/file", "/c/x/y/z"})
        REQUIRE(p.s.store.publish(rigFolder(p.s.rig) + name, "no record"));
    REQUIRE(p.s.store.publish("snugwalk1/not-a-rig/c/d/x.ctl", "no record"));
    CHECK(rigsOwnedBy(p.s.store, keyFromWords(p.words).value()).value().size() == 1);
}

TEST_CASE("a rig that somebody made up around the printed key has another mark")
{
    Printed p;
    const DeviceKey printed = keyFromWords(p.words).value();
    Party evil("evil");
    evil.set(p.s.rig, "rig", {{"name", "made up"}});
    REQUIRE(shareRig(evil.book(), evil.keys, p.s.rig));
    REQUIRE(enrollDevice(evil.book(), evil.keys, p.s.rig,
                         {printed.publicKey(), SealPair::of(printed).publicKey(), "p", SyncRole::Owner, ""}));
    evil.meet(p.s.store);
    const auto found = rigsOwnedBy(p.s.store, printed).value();
    REQUIRE(found.size() == 2);
    CHECK(rigMark(found[0].root) != rigMark(found[1].root));
    CHECK(std::count_if(found.begin(), found.end(),
                        [&](const FoundRig &rig) { return rigMark(rig.root) == rigMark(p.root); }) == 1);
    // a logbook that shares one of them does not take the other in its place
    Party fresh("fresh");
    const bool firstIsOurs = found[0].root == p.root;
    REQUIRE(recoverRig(fresh.book(), fresh.keys, printed, found[firstIsOurs ? 0 : 1]));
    CHECK(recoverRig(fresh.book(), fresh.keys, printed, found[firstIsOurs ? 1 : 0]).error().code ==
          Errc::Conflict);
    REQUIRE(recoverRig(fresh.book(), fresh.keys, printed, found[firstIsOurs ? 0 : 1]));
}

TEST_CASE("first records made up by the hundred: some are looked at, and the search ends")
{
    Printed p;
    const DeviceKey printed = keyFromWords(p.words).value();
    for (int n = 0; n < 200; ++n) {
        const Keys evil(DeviceKey::fromSeed(blake2b("evil " + std::to_string(n)).view()));
        ControlRecord root;
        root.space = p.s.rig;
        root.counter = 1;
        root.at = timeAt("2026-03-14T09:00:00Z");
        root.action = "found";
        root.body = Value::Map{{"seal", Bytes{evil.pair.publicKey()}}, {"epoch", Bytes{std::string(8, '1')}}};
        const SignedControl made = signControl(evil.device, root);
        REQUIRE(p.s.store.publish(rigFolder(p.s.rig) + "/c/" + made.record.signer.text() + "/000000000001-" +
                                      made.record.hash.text().substr(0, 20) + ".ctl",
                                  made.bytes));
    }
    const auto found = rigsOwnedBy(p.s.store, printed);
    REQUIRE(found);
    CHECK(found->size() <= 1);
}
