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

namespace {

const HoldRules &rules() { return realCatalogue().holds(); }

std::vector<HoldHit> held(const Point &point, std::string_view defect, int grade)
{
    return holdsByDefect(rules(), point, defect, grade);
}

} // namespace

TEST_CASE("rules 1 to 15 and the three lists without numbers, each with what it forbids and a source")
{
    std::set<std::string> keys;
    for (const HoldRule &rule : rules().all()) {
        CAPTURE(rule.key);
        CHECK(keys.insert(rule.key).second);
        CHECK(rule.forbids == (rule.number() > 0 ? "move" : rule.key));
        REQUIRE_FALSE(rule.sources.empty());
        for (const std::string &source : rule.sources)
            CHECK(realCatalogue().sources().count(source) == 1);
    }
    CHECK(keys.size() == 18);
    for (int number = 1; number <= 15; ++number)
        CHECK(rules().find(std::to_string(number))->number() == number);
    CHECK(rules().find("16") == nullptr);
}

TEST_CASE("every trigger names a point of the hold list, and what that point has")
{
    for (const HoldRule &rule : rules().all()) {
        for (const DefectHold &hold : rule.defects) {
            CAPTURE(hold.point);
            CAPTURE(hold.defect);
            const Point *point = realCatalogue().find(hold.point);
            REQUIRE(point != nullptr);
            CHECK(std::count(point->defects.begin(), point->defects.end(), hold.defect) == 1);
            CHECK(isOnHoldList(*point));
        }
        for (const ReadingHold &hold : rule.readings) {
            CAPTURE(hold.point);
            const ReadingSpec *spec = realCatalogue().find(hold.point)->reading(hold.reading);
            REQUIRE(spec != nullptr);
            CHECK(spec->dimension == (hold.below ? *hold.below : *hold.above).dimension);
            CHECK(isOnHoldList(*realCatalogue().find(hold.point)));
        }
    }
}

TEST_CASE("every point of the hold list can hold by its own rule, before grade 5")
{
    int points = 0;
    for (const Point &point : realCatalogue().points()) {
        if (!isOnHoldList(point))
            continue;
        CAPTURE(point.slug);
        const std::string key = point.hold ? std::to_string(*point.hold) : point.forbids;
        const auto ofRule = [&](const auto &list) {
            return std::any_of(list.begin(), list.end(), [&](const auto &of) { return of.rule->key == key; });
        };
        CHECK((ofRule(rules().defectsOf(point.slug)) || ofRule(rules().readingsOf(point.slug)) ||
               ofRule(rules().checksOf(point.slug))));
        ++points;
    }
    MESSAGE("points on the hold list: ", points);
    CHECK(points >= 90);
}

TEST_CASE("a dead stop lamp holds at any grade, a cracked lens only at five")
{
    const Point &lamps = *realCatalogue().find("stop-lamps");
    REQUIRE(held(lamps, "dead", 1).size() == 1);
    CHECK(held(lamps, "dead", 1).front().number == 9);
    CHECK(held(lamps, "dead", 1).front().forbids == "move");
    CHECK(held(lamps, "crack", 4).empty());
    CHECK(held(lamps, "crack", 5).front().rule == "grade_5");
}

TEST_CASE("what is only loose in the lap holds from grade 4")
{
    const Point &step = *realCatalogue().find("entry-step");
    CHECK(held(step, "loose", 3).empty());
    CHECK(held(step, "loose", 4).front().number == 11);
}

TEST_CASE("an alarm that is past its date forbids sleeping, a cylinder lighting, a tingle plugging in")
{
    CHECK(held(*realCatalogue().find("co-alarm"), "expired", 1).front().forbids == "sleep");
    CHECK(held(*realCatalogue().find("gas-cylinder-date"), "expired", 1).front().forbids == "light");
    CHECK(held(*realCatalogue().find("live-skin-check"), "leaking", 1).front().forbids == "plug");
}

TEST_CASE("off the hold list nothing holds")
{
    CHECK(held(*realCatalogue().find("roof-membrane"), "crack", 5).empty());
    CHECK(held(*realCatalogue().find("belly-pan-sheet"), "missing", 5).empty());
}
