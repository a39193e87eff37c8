// SPDX-License-Identifier: Apache-2.0
// Every number of the hold list: at it nothing holds, just past it something does.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "../../unit/due/story.hpp"
#include "concern/reading_holds.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

struct At {
    std::string point;
    std::string reading;
    Dimension dimension;
    std::string place = "wheel 1L";
};

// Keys of the rules that fire on one reading, whatever mark it came with.
std::vector<std::string> firing(const At &at_, double si, Rig rig = {})
{
    Story story;
    story.rig() = std::move(rig);
    story.mark(story.walk(at("2026-01-01")), at_.point, MarkState::Pass, at("2026-01-01")).readings = {
        {at_.reading, at_.place, at_.dimension, si, ""}};
    const RigHistory history = story.history();
    const ConcernContext context(realCatalogue(), history, at("2026-01-02"));
    std::vector<std::string> keys;
    for (const HoldHit &hit : holdsByReading(context, *realCatalogue().find(at_.point)))
        keys.push_back(hit.rule);
    return keys;
}

using Keys = std::vector<std::string>;
constexpr double hair = 1e-6;

// A lower limit: at it and over it nothing, a hair under it the rule.
void wantLeast(const char *rule, const At &at_, double limit)
{
    CAPTURE(at_.point);
    CHECK(firing(at_, limit).empty());
    CHECK(firing(at_, limit * (1.0 + hair)).empty());
    CHECK(firing(at_, limit * (1.0 - hair)) == Keys{rule});
}

void wantMost(const char *rule, const At &at_, double limit)
{
    CAPTURE(at_.point);
    CHECK(firing(at_, limit).empty());
    CHECK(firing(at_, limit * (1.0 - hair)).empty());
    CHECK(firing(at_, limit * (1.0 + hair)) == Keys{rule});
}

constexpr double fahrenheit(double f) { return (f + 459.67) * 5.0 / 9.0; }
constexpr double inch = 0.0254;

} // namespace

TEST_CASE("49 CFR 570.62: tread 2/32 in; 4/32 in on the front axle of a motorized base")
{
    const At tread{"tread-depth", "tread-depth", Dimension::Length};
    wantLeast("1", tread, 1.6e-3); // the stricter of 1.6 mm and 2/32 in = 1.5875 mm
    CHECK(firing(tread, 2.0 / 32 * inch * 0.999) == Keys{"1"});
    Rig motorhome;
    motorhome.kind = RigKind::Motorhome;
    CHECK(firing(tread, 3.19e-3, motorhome) == Keys{"1"});
    CHECK(firing(tread, 3.2e-3, motorhome).empty());
    CHECK(firing({"tread-depth", "tread-depth", Dimension::Length, "wheel 2L"}, 3e-3, motorhome).empty());
    motorhome.ratings.gross = Mass::fromSi(10000 * 0.45359237); // the rule is for those over 10,000 lb
    CHECK(firing(tread, 3.0e-3, motorhome).empty());
    motorhome.ratings.gross = Mass::fromSi(10001 * 0.45359237);
    CHECK(firing(tread, 3.0e-3, motorhome) == Keys{"1"});
}

TEST_CASE("a flat tire: what a gauge cannot tell from nothing (common practice, no source)")
{
    wantLeast("1", {"tire-pressure", "cold-pressure", Dimension::Pressure}, 10e3);
}

TEST_CASE("over 100 % of a rating: the labels of the rig, tires by 49 CFR 571.120")
{
    for (const char *point : {"axle-loads", "gross-weight", "combination-weight", "tire-load-ratings"})
        wantMost("2", {point, "share-of-rating", Dimension::Fraction, ""}, 1.0);
}

TEST_CASE("49 CFR 570.59: lining 1/16 in")
{
    wantLeast("5", {"brake-linings", "lining-thickness", Dimension::Length}, 1.6e-3);
    CHECK(firing({"brake-linings", "lining-thickness", Dimension::Length}, inch / 16 * 0.999) == Keys{"5"});
}

TEST_CASE("a wheel without current does not brake (common practice: under 0.1 A)")
{
    wantLeast("5", {"brake-current", "brake-current", Dimension::Current}, 0.1);
}

TEST_CASE("S.D. Codified Laws 32-18-17: the breakaway lasts 15 minutes")
{
    wantLeast("6", {"breakaway-battery", "breakaway-hold-time", Dimension::Duration, ""}, 15.0 * 60.0);
}

TEST_CASE("Utah Admin. Code R714-162-10: fifth-wheel slack 1/2 in")
{
    wantMost("7", {"fifth-wheel-head", "head-play", Dimension::Length, ""}, inch / 2);
}

TEST_CASE("a ball worn under its limit: 1/32 in of flat, 49.0 mm at a friction coupling (common practice)")
{
    wantMost("7", {"ball-size", "ball-flat", Dimension::Length, ""}, 0.8e-3);
    wantLeast("7", {"friction-coupling", "ball-diameter", Dimension::Length, ""}, 49e-3);
}

TEST_CASE("49 CFR 570.60: steering play 1/4 in, the strictest row")
{
    wantMost("14", {"steering-play", "steering-play", Dimension::Length, ""}, 6.4e-3);
}

TEST_CASE("200 degF at a hub, stricter as 93 degC (common practice, no source)")
{
    const At hub{"hub-temperature", "hub-temperature", Dimension::Temperature};
    CHECK(firing(hub, 273.15 + 93.0).empty());
    CHECK(firing(hub, 273.15 + 93.01) == Keys{"4"});
    CHECK(firing(hub, fahrenheit(200.0)) == Keys{"4"});
    CHECK(firing(hub, fahrenheit(199.0)).empty());
}

TEST_CASE("skin voltage 2 V, plug 54 degC, CO 9 ppm inside (common practice, no source)")
{
    wantMost("plug", {"live-skin-check", "skin-voltage", Dimension::Voltage, ""}, 2.0);
    wantMost("plug", {"shore-cord", "plug-temperature", Dimension::Temperature, ""}, 273.15 + 54.0);
    wantMost("sleep", {"heater-exhaust", "co-inside", Dimension::Count, ""}, 9.0);
}

TEST_CASE("no figure of the hold list is left without a test here")
{
    // rule and reading of each limit tested above; checks have tests of their own in tests/unit/concern
    std::multimap<std::string, std::string> wanted = {
        {"1", "tread-depth"},         {"1", "tread-depth"},        {"1", "cold-pressure"},
        {"2", "share-of-rating"},     {"2", "share-of-rating"},    {"2", "share-of-rating"},
        {"2", "share-of-rating"},     {"5", "lining-thickness"},   {"5", "brake-current"},
        {"6", "breakaway-hold-time"}, {"7", "head-play"},          {"7", "ball-flat"},
        {"7", "ball-diameter"},       {"14", "steering-play"},     {"sleep", "co-inside"},
        {"plug", "skin-voltage"},     {"plug", "plug-temperature"}};
    std::multimap<std::string, std::string> have;
    for (const HoldRule &rule : realCatalogue().holds().all()) {
        for (const ReadingHold &reading : rule.readings)
            have.emplace(rule.key, reading.reading);
    }
    const auto sorted = [](const std::multimap<std::string, std::string> &map) {
        std::vector<std::pair<std::string, std::string>> list(map.begin(), map.end());
        std::sort(list.begin(), list.end());
        return list;
    };
    CHECK(sorted(have) == sorted(wanted));
}
