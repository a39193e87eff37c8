// SPDX-License-Identifier: Apache-2.0
// Finding things again by name, by id and by the beginning of an id.
#include <doctest/doctest.h>

#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Id idFrom(const std::string &hex) { return Id::parse(hex + std::string(32 - hex.size(), '0')).value(); }

void putRig(Logbook &book, const Id &id, const std::string &name)
{
    Rig rig = bareRig();
    rig.id = id;
    rig.name = name;
    REQUIRE(saveRig(book, rig, {"W. Tester", {}, {}}));
}

} // namespace

TEST_CASE("a rig by whole name, by id, by the beginning of its id")
{
    TestBook home;
    CHECK(findRig(home.book(), "Bare").error().act.find("rig add") != std::string::npos);
    putRig(home.book(), idFrom("abcd12"), "Bare");
    putRig(home.book(), idFrom("abcd34"), "Heron");
    CHECK(findRig(home.book(), "Heron")->id == idFrom("abcd34"));
    CHECK(findRig(home.book(), "abcd12")->name == "Bare");
    CHECK(findRig(home.book(), "ABCD12")->name == "Bare");
    CHECK(findRig(home.book(), idFrom("abcd34").text())->name == "Heron");
    CHECK(findRig(home.book(), "heron").error().code == Errc::NotFound);
    CHECK(findRig(home.book(), "abc").error().code == Errc::NotFound);
    CHECK(findRig(home.book(), "").error().code == Errc::NotFound);
    CHECK(findRig(home.book(), "abcd").error().code == Errc::InvalidInput); // two begin so
}

TEST_CASE("a name beats the beginning of another's id; a name used twice must be told apart")
{
    TestBook home;
    putRig(home.book(), idFrom("abcd12"), "Bare");
    putRig(home.book(), idFrom("ffff"), "abcd12");
    CHECK(findRig(home.book(), "abcd12")->id == idFrom("ffff"));
    putRig(home.book(), idFrom("eeee"), "Bare");
    CHECK(findRig(home.book(), "Bare").error().code == Errc::InvalidInput);
    CHECK(findRig(home.book(), "eeee")->name == "Bare");
}

TEST_CASE("a thing by the beginning of its id")
{
    TestBook home;
    for (const char *hex : {"00", "abcd10", "abcd1f", "abce", "ffffffff"})
        putRig(home.book(), idFrom(hex), std::string("rig ") + hex);
    auto &db = home.book().db();
    CHECK(thingByPrefix(db, "rig", "abce")->id == idFrom("abce"));
    CHECK(thingByPrefix(db, "rig", "ABCD1F")->id == idFrom("abcd1f"));
    CHECK(thingByPrefix(db, "rig", "abcd10")->id == idFrom("abcd10"));
    CHECK(thingByPrefix(db, "rig", "fffff")->id == idFrom("ffffffff"));
    CHECK(thingByPrefix(db, "rig", idFrom("abcd10").text())->id == idFrom("abcd10"));
    CHECK(thingByPrefix(db, "rig", "abcd1").error().code == Errc::InvalidInput);
    CHECK(thingByPrefix(db, "rig", "abcf").error().code == Errc::NotFound);
    CHECK(thingByPrefix(db, "walk", "abce").error().code == Errc::NotFound);
    CHECK(thingByPrefix(db, "rig", idFrom("abcd10").text() + "0").error().code == Errc::NotFound);
    for (const char *bad : {"", "abc", "xyzw", "ab%_"})
        CHECK(thingByPrefix(db, "rig", bad).error().code == Errc::InvalidInput);
}

TEST_CASE("lists are oldest first; what is not there is not found")
{
    Walker walker;
    walker.nextWalk();
    walker.nextWalk("full_round");
    const auto walks = walksOf(walker.book(), walker.rig.id).value();
    REQUIRE(walks.size() == 3);
    CHECK(walks[0].started.instant < walks[1].started.instant);
    CHECK(walks[2].id == walker.walk.id);
    CHECK(openWalk(walker.book(), walker.rig.id).value()->id == walker.walk.id);
    REQUIRE(walker.finish());
    CHECK_FALSE(openWalk(walker.book(), walker.rig.id).value());
    const Id none = walker.home.ids.next();
    CHECK(walkOf(walker.book(), none).error().code == Errc::NotFound);
    CHECK(rigOf(walker.book(), none).error().code == Errc::NotFound);
    CHECK(findingOf(walker.book(), none).error().code == Errc::NotFound);
    CHECK(walksOf(walker.book(), none)->empty());
    CHECK(findingHistories(walker.book(), none)->empty());
}
