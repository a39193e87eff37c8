// SPDX-License-Identifier: Apache-2.0
// The rig as it was, folded from the entries of the logbook.
#include <doctest/doctest.h>

#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

LocalTime day(int number) { return {timeAt("2026-01-01T12:00:00Z").instant + std::chrono::days(number), {}}; }

Id save(TestBook &home, Rig rig, const LocalTime &when)
{
    return saveRig(home.book(), rig, {"W. Tester", when, {}}).value();
}

} // namespace

TEST_CASE("each change is a version, the same rig written again is none")
{
    TestBook home;
    Rig rig = bareRig();
    rig.fittings = {"awning"};
    rig.id = save(home, rig, day(0));
    rig.fittings = {"awning", "solar"};
    rig.tires.size = "ST225/75R15";
    save(home, rig, day(100));
    save(home, rig, day(150));
    rig.fittings = {"solar"};
    save(home, rig, day(200));
    const auto versions = rigVersions(home.book(), rig.id).value();
    REQUIRE(versions.size() == 3);
    CHECK(versions[0].from == day(0));
    CHECK(versions[1].from == day(100));
    CHECK(versions[1].rig.tires.size == "ST225/75R15");
    CHECK(versions[2].rig == rigOf(home.book(), rig.id).value());
    CHECK(rigAt(home.book(), rig.id, day(99).instant)->fittings == std::set<std::string>{"awning"});
    CHECK(rigAt(home.book(), rig.id, day(100).instant)->fittings.size() == 2);
    CHECK(rigAt(home.book(), rig.id, day(500).instant)->fittings == std::set<std::string>{"solar"});
    CHECK(rigAt(home.book(), rig.id, day(-9).instant)->fittings == std::set<std::string>{"awning"});
}

TEST_CASE("a change told afterwards counts from when it was said to be")
{
    TestBook home;
    Rig rig = bareRig();
    rig.id = save(home, rig, day(0));
    rig.tires.size = "later";
    save(home, rig, day(300));
    rig.wheels.studs = 6; // written last, done before
    save(home, rig, day(100));
    CHECK(rigAt(home.book(), rig.id, day(200).instant)->wheels.studs == 6);
    CHECK(rigAt(home.book(), rig.id, day(200).instant)->tires.size.empty());
    CHECK(rigAt(home.book(), rig.id, day(300).instant)->tires.size == "later");
}

TEST_CASE("a rig that is not there is not found")
{
    TestBook home;
    save(home, bareRig(), day(0));
    CHECK(rigVersions(home.book(), home.book().newId()).error().code == Errc::NotFound);
    CHECK(rigAt(home.book(), Id{}, day(0).instant).error().code == Errc::NotFound);
}
