// SPDX-License-Identifier: Apache-2.0
// What was added to a rig, taken from it or changed on it, and which points follow.
#include <doctest/doctest.h>

#include "../due/story.hpp"
#include "compare/compare.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Opening vent(const std::string &name, double aft)
{
    Opening o;
    o.name = name;
    o.kind = OpeningKind::Vent;
    o.at.aft = metres(aft);
    return o;
}

Rig rigThen()
{
    Rig rig;
    rig.name = "Heron";
    rig.fittings = {"awning", "lp_gas"};
    rig.openings = {vent("vent 1", 1.0), vent("vent 2", 2.0)};
    rig.measures.axles = {metres(3.0)};
    rig.tires.size = "ST205/75R14";
    return rig;
}

} // namespace

TEST_CASE("the same rig has no changes, another name is none")
{
    Rig other = rigThen();
    CHECK(rigChanges(rigThen(), other).empty());
    other.name = "Egret";
    other.yearly = kilometres(3000);
    CHECK(rigChanges(rigThen(), other).empty());
}

TEST_CASE("fittings, openings and members, each told once")
{
    Rig now = rigThen();
    now.fittings = {"lp_gas", "solar"};
    now.openings = {vent("vent 1", 1.5), vent("vent 3", 3.0)};
    now.measures.axles = {metres(2.8), metres(3.6)};
    now.tires.size = "ST225/75R15";
    now.wheels.torque = Torque::fromSi(150);
    const auto changes = rigChanges(rigThen(), now);
    std::vector<std::string> told;
    for (const RigChange &c : changes)
        told.push_back(std::string(slug(c.kind)) + " " + c.what + (c.name.empty() ? "" : " " + c.name));
    CHECK(told == std::vector<std::string>{"removed fitting awning", "added fitting solar",
                                           "changed opening vent 1", "removed opening vent 2",
                                           "added opening vent 3", "changed measures.axles",
                                           "changed tires.size", "added wheels.torque"});
    CHECK(changes[6].then == Value("ST205/75R14"));
    CHECK(changes[6].now == Value("ST225/75R15"));
    CHECK(changes[5].now.list().size() == 2);
    // the other way round adds what was removed
    CHECK(rigChanges(now, rigThen())[0] ==
          RigChange{RigChangeKind::Added, "fitting", "awning", Value(false), Value(true)});
}

TEST_CASE("the rig as of a moment, whatever the order of versions")
{
    RigHistory history;
    history.rig.name = "now";
    CHECK(rigAsOf(history, at("2026-01-01").instant).name == "now");
    for (const char *date : {"2025-01-01", "2024-01-01", "2026-01-01"}) {
        Rig rig;
        rig.name = date;
        history.rigs.push_back({at(date), rig});
    }
    CHECK(rigAsOf(history, at("2023-01-01").instant).name == "2024-01-01"); // before it was entered
    CHECK(rigAsOf(history, at("2024-01-01").instant).name == "2024-01-01");
    CHECK(rigAsOf(history, at("2025-12-31").instant).name == "2025-01-01");
    CHECK(rigAsOf(history, at("2030-01-01").instant).name == "2026-01-01");
}

TEST_CASE("points of what was taken off or fitted are lists of their own")
{
    const Catalogue &catalogue = realCatalogue();
    Story story;
    const Id then =
        story.walk(at("2025-01-01"), "full_round", {"awning-locks", "tread-depth", "smoke-alarm"});
    const Id now =
        story.walk(at("2026-01-01"), "full_round", {"gas-cylinder-mount", "tread-depth", "co-alarm"});
    RigHistory history = story.history();
    Rig before;
    before.fittings = {"awning"};
    Rig after;
    after.fittings = {"lp_gas"};
    history.rigs = {{at("2024-01-01"), before}, {at("2025-06-01"), after}};
    history.rig = after;
    const Comparison c = compareWalks(catalogue, history, then, now);
    CHECK(c.noLongerFitted == std::vector<std::string>{"awning-locks"});
    CHECK(c.onlyThen == std::vector<std::string>{"smoke-alarm"});
    CHECK(c.fittedSince == std::vector<std::string>{"gas-cylinder-mount"});
    CHECK(c.onlyNow == std::vector<std::string>{"co-alarm"});
    CHECK(c.rigChanges.size() == 2);
    // nothing changed when both walks lie on one side of the change
    history.rigs[1].from = at("2026-06-01");
    CHECK(compareWalks(catalogue, history, then, now).rigChanges.empty());
}
