// SPDX-License-Identifier: Apache-2.0
// Settling what two people wrote differently by keeping one version, everywhere.
#include <doctest/doctest.h>

#include "logbook/keep_version.hpp"
#include "support/party.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const Doer person{"a person", std::nullopt, std::nullopt};

// Both wrote a mark without knowing of each other.
struct Parted {
    Parted()
    {
        s.owner.set(mark, "mark", {{"rig", s.rig.text()}, {"state", "pass"}});
        s.both();
        ours = s.owner.set(mark, "mark", {{"state", "pass"}, {"note", "ours"}});
        ours = s.owner.set(mark, "mark", {{"state", "not_fitted"}});
        theirs = s.other.set(mark, "mark", {{"state", "could_not_look"}, {"reason", "rain"}});
        s.both();
    }
    Shared s;
    Id mark = s.owner.home.ids.next();
    EntryId ours;
    EntryId theirs;
};

} // namespace

TEST_CASE("the version kept stands everywhere, and what only the other one wrote beside it goes")
{
    Parted p;
    REQUIRE(conflictsOf(p.s.owner.book(), p.s.rig).value().size() == 1);
    const auto kept = keepVersion(p.s.owner.book(), p.mark, {p.ours}, person);
    REQUIRE(kept);
    CHECK(kept->settled == Value::Map{{"state", "not_fitted"}});
    CHECK(kept->gone == std::vector<std::string>{"reason"});
    CHECK(kept->left.empty());
    p.s.both();
    for (Party *party : {&p.s.owner, &p.s.other}) {
        CHECK(conflictsOf(party->book(), p.s.rig).value().empty());
        CHECK(party->shown("mark", p.mark, "state") == Value("not_fitted"));
        CHECK(party->shown("mark", p.mark, "note") == Value("ours"));
        CHECK(party->shown("mark", p.mark, "reason").isNull());
        CHECK(party->number("SELECT count(*) FROM entry WHERE entity = x'" + p.mark.text() + "'") == 5);
    }
    CHECK(projectionNow(p.s.owner.book()) == projectionNow(p.s.other.book()));
}

TEST_CASE("keeping the other one leaves its reason; both at once, none, or one that is gone is refused")
{
    Parted p;
    CHECK(keepVersion(p.s.owner.book(), p.mark, {p.ours, p.theirs}, person).error().code ==
          Errc::InvalidInput);
    CHECK(keepVersion(p.s.owner.book(), p.mark, {}, person).error().code == Errc::NotFound);
    CHECK(keepVersion(p.s.owner.book(), p.mark, {{p.ours.stream, 1}}, person).error().code == Errc::NotFound);
    CHECK(keepVersion(p.s.owner.book(), p.s.rig, {p.ours}, person).error().code == Errc::NotFound);
    REQUIRE(keepVersion(p.s.other.book(), p.mark, {p.theirs}, person));
    CHECK(keepVersion(p.s.other.book(), p.mark, {p.theirs}, person).error().code == Errc::NotFound);
    p.s.both();
    for (Party *party : {&p.s.owner, &p.s.other}) {
        CHECK(party->shown("mark", p.mark, "state") == Value("could_not_look"));
        CHECK(party->shown("mark", p.mark, "reason") == Value("rain"));
        CHECK(conflictsOf(party->book(), p.s.rig).value().empty());
    }
}
