// SPDX-License-Identifier: Apache-2.0
// The hold tables hang together with the product's catalogue.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "../due/story.hpp"
#include "concern/holds.hpp"
#include "due/severity.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("rules 1 to 15 and the three lists without numbers, each with sentence, act and source")
{
    std::set<std::string> keys;
    for (const HoldRule &rule : holdRules()) {
        CHECK(keys.insert(std::string(rule.key)).second);
        CHECK_FALSE(rule.sentence.empty());
        CHECK_FALSE(rule.source.empty());
        CHECK(std::set<std::string_view>{"move", "sleep", "plug", "light"}.count(rule.forbids) == 1);
    }
    CHECK(keys.size() == 18);
    for (int number = 1; number <= 15; ++number)
        CHECK(findHoldRule(std::to_string(number))->forbids == "move");
    CHECK(findHoldRule("16") == nullptr);
}

TEST_CASE("every defect that holds names a point, a defect of that point, and a rule")
{
    for (const DefectHold &hold : defectHolds()) {
        CAPTURE(hold.point);
        CAPTURE(hold.defect);
        REQUIRE(findHoldRule(hold.rule) != nullptr);
        CHECK(hold.leastGrade >= 1);
        CHECK(hold.leastGrade <= 5);
        if (hold.point.substr(0, 5) == "hold:")
            continue;
        const Point *point = realCatalogue().find(hold.point);
        REQUIRE(point != nullptr);
        CHECK(std::count(point->defects.begin(), point->defects.end(), hold.defect) == 1);
        CHECK(isOnHoldList(*point)); // what holds is on the hold list
    }
}

TEST_CASE("a dead stop lamp holds at any grade, a cracked lens only at five")
{
    const Point &lamps = *realCatalogue().find("stop-lamps");
    REQUIRE(holdsByDefect(lamps, "dead", 1).size() == 1);
    CHECK(holdsByDefect(lamps, "dead", 1).front().number == 9);
    CHECK(holdsByDefect(lamps, "dead", 1).front().forbids == "move");
    CHECK(holdsByDefect(lamps, "crack", 4).empty());
    CHECK(holdsByDefect(lamps, "crack", 5).front().rule == "grade_5");
}

TEST_CASE("what is only loose in the lap holds from grade 4")
{
    const Point &step = *realCatalogue().find("entry-step");
    CHECK(holdsByDefect(step, "loose", 3).empty());
    CHECK(holdsByDefect(step, "loose", 4).front().number == 11);
}

TEST_CASE("an alarm that is past its date forbids sleeping, a cylinder lighting, a tingle plugging in")
{
    CHECK(holdsByDefect(*realCatalogue().find("co-alarm"), "expired", 1).front().forbids == "sleep");
    CHECK(holdsByDefect(*realCatalogue().find("gas-cylinder-date"), "expired", 1).front().forbids == "light");
    CHECK(holdsByDefect(*realCatalogue().find("live-skin-check"), "leaking", 1).front().forbids == "plug");
}

TEST_CASE("off the hold list nothing holds")
{
    CHECK(holdsByDefect(*realCatalogue().find("roof-membrane"), "crack", 5).empty());
    CHECK(holdsByDefect(*realCatalogue().find("belly-pan-sheet"), "missing", 5).empty());
}
