// SPDX-License-Identifier: Apache-2.0
// Choosing a version, taking over what was set aside, wanting an original: what is done, refused, and seen
// elsewhere.
#include <doctest/doctest.h>

#include "logbook/keep_version.hpp"
#include "support/party.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const Doer somebody{"somebody", std::nullopt, std::nullopt};

// Two write one mark apart: a pass, and a could-not-look with its reason.
struct Apart {
    Apart() : s(SyncRole::Helper), mark(s.owner.home.ids.next())
    {
        pass = s.owner.set(mark, "mark", {{"rig", s.rig.text()}, {"state", "pass"}, {"note", "dry"}});
        unseen = s.other.set(mark, "mark",
                             {{"rig", s.rig.text()}, {"state", "could_not_look"}, {"reason", "ice"}});
        s.both();
    }
    [[nodiscard]] std::vector<Conflict> of(Party &party) const
    {
        return conflictsOf(party.book(), s.rig).value();
    }
    Shared s;
    Id mark;
    EntryId pass;
    EntryId unseen;
};

} // namespace

TEST_CASE("the version kept stands on both devices, what only the other wrote is taken away")
{
    for (const bool keepsPass : {true, false}) {
        Apart apart;
        REQUIRE(apart.of(apart.s.owner).size() == 1);
        REQUIRE(apart.of(apart.s.other).size() == 1);
        const auto kept =
            keepVersion(apart.s.owner.book(), apart.mark, {keepsPass ? apart.pass : apart.unseen}, somebody);
        REQUIRE(kept);
        CHECK(kept->settled.at("state") == Value(keepsPass ? "pass" : "could_not_look"));
        CHECK(kept->gone == std::vector<std::string>{keepsPass ? "reason" : "note"});
        CHECK(kept->left.empty());
        apart.s.both();
        for (Party *party : {&apart.s.owner, &apart.s.other}) {
            CHECK(apart.of(*party).empty());
            CHECK(party->shown("mark", apart.mark, "reason").isNull() == keepsPass);
            CHECK(party->shown("mark", apart.mark, "note").isNull() != keepsPass);
        }
        CHECK(projectionNow(apart.s.owner.book()) == projectionNow(apart.s.other.book()));
        // nothing of it is gone from the log
        CHECK(apart.s.owner.number(
                  "SELECT count(*) FROM entry WHERE instr(bytes, CAST('ice' AS BLOB)) > 0") == 1);
    }
}

TEST_CASE("what cannot be settled is refused and writes nothing")
{
    Apart apart;
    Logbook &book = apart.s.owner.book();
    const auto before = entryCount(book);
    CHECK(keepVersion(book, apart.mark, {}, somebody).error().code == Errc::NotFound);
    CHECK(keepVersion(book, apart.mark, {apart.pass, apart.unseen}, somebody).error().code ==
          Errc::InvalidInput);
    CHECK(keepVersion(book, apart.mark, {{book.stream(), 999}}, somebody).error().code == Errc::NotFound);
    CHECK(keepVersion(book, apart.s.rig, {apart.pass}, somebody).error().code == Errc::NotFound);
    CHECK(entryCount(book) == before);
    REQUIRE(keepVersion(book, apart.mark, {apart.pass}, somebody));
    CHECK(keepVersion(book, apart.mark, {apart.pass}, somebody).error().code ==
          Errc::NotFound); // settled already
}

TEST_CASE("two settle the same apart, each another way: that is a conflict again, and one of them settles it")
{
    Apart apart;
    REQUIRE(keepVersion(apart.s.owner.book(), apart.mark, {apart.pass}, somebody));
    REQUIRE(keepVersion(apart.s.other.book(), apart.mark, {apart.unseen}, somebody));
    apart.s.both();
    const auto again = apart.of(apart.s.other);
    REQUIRE(again.size() == 1);
    CHECK(apart.s.other.shown("mark", apart.mark, "state") ==
          Value("could_not_look")); // the worse until then
    EntryId pass;
    for (const FieldConflict &field : again.front().fields) {
        for (const Version &version : field.versions)
            pass = version.value == Value("pass") ? version.entry : pass;
    }
    REQUIRE(keepVersion(apart.s.other.book(), apart.mark, {pass}, somebody));
    apart.s.both();
    for (Party *party : {&apart.s.owner, &apart.s.other}) {
        CHECK(apart.of(*party).empty());
        CHECK(party->shown("mark", apart.mark, "state") == Value("pass"));
    }
}

TEST_CASE("only an owner takes over, only what is set aside, and once is enough")
{
    Shared s(SyncRole::Viewer);
    const Id trip = s.owner.home.ids.next();
    const EntryId written = s.other.set(trip, "trip", {{"rig", s.rig.text()}, {"title", "aside"}});
    s.both();
    REQUIRE(asideOf(s.owner.book(), s.rig)->size() == 1);
    CHECK(adoptEntries(s.other.book(), s.other.keys, s.rig, {written}).error().code == Errc::Unsupported);
    CHECK(adoptEntries(s.owner.book(), s.owner.keys, s.rig, {{s.owner.book().stream(), 1}}).error().code ==
          Errc::NotFound);
    CHECK(s.owner.shown("trip", trip, "title").isNull());
    REQUIRE(adoptEntries(s.owner.book(), s.owner.keys, s.rig, {written}));
    CHECK(adoptEntries(s.owner.book(), s.owner.keys, s.rig, {written}).error().code == Errc::NotFound);
    s.both();
    for (Party *party : {&s.owner, &s.other}) {
        CHECK(party->shown("trip", trip, "title") == Value("aside"));
        CHECK(asideOf(party->book(), s.rig)->empty());
    }
}

TEST_CASE("a wanted original is wanted once, until it comes")
{
    TestBook home;
    const Hash one = blake2b("one");
    const Hash two = blake2b("two");
    for (const Hash &hash : {one, two, one})
        REQUIRE(wantPhoto(home.book(), hash));
    CHECK(wantedPhotos(home.book())->size() == 2);
    REQUIRE(photoArrived(home.book(), one));
    REQUIRE(photoArrived(home.book(), one));
    CHECK(wantedPhotos(home.book()).value() == std::vector<Hash>{two});
    CHECK(wantedPhotos(home.reopened()).value() == std::vector<Hash>{two});
}
