// SPDX-License-Identifier: Apache-2.0
// Numbers that hold, each side of its limit, whatever the mark said.
#include <doctest/doctest.h>

#include "../due/story.hpp"
#include "concern/reading_holds.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Reading reading(const std::string &slug, const std::string &place, Dimension dimension, double si)
{
    return {slug, place, dimension, si, ""};
}

std::vector<HoldHit> holdsAt(const std::string &point, const Story &story, LocalTime now)
{
    const RigHistory history = story.history();
    return holdsByReading(ConcernContext(realCatalogue(), history, now), *realCatalogue().find(point));
}

std::vector<HoldHit> hits(const std::string &point, std::vector<Reading> readings, Rig rig = {})
{
    Story story;
    story.rig() = std::move(rig);
    story.mark(story.walk(at("2026-01-01")), point, MarkState::Pass, at("2026-01-01")).readings =
        std::move(readings);
    return holdsAt(point, story, at("2026-01-02"));
}

std::vector<HoldHit> nose(double kg, std::optional<double> grossKg, Practice practice,
                          std::optional<double> ratedKg)
{
    Story story;
    story.rig().practice = practice;
    if (ratedKg)
        story.rig().ratings.nose = kilograms(*ratedKg);
    const Id walk = story.walk(at("2026-01-01"));
    if (grossKg)
        story.mark(walk, "gross-weight", MarkState::Pass, at("2026-01-01")).readings = {
            reading("gross-weight", "", Dimension::Mass, *grossKg)};
    story.mark(walk, "nose-weight", MarkState::Pass, at("2026-01-01")).readings = {
        reading("nose-weight", "", Dimension::Mass, kg)};
    return holdsAt("nose-weight", story, at("2026-01-02"));
}

} // namespace

TEST_CASE("tread under 1.6 mm, the wheel named")
{
    CHECK(hits("tread-depth", {reading("tread-depth", "wheel 1L", Dimension::Length, 1.6e-3)}).empty());
    const auto low = hits("tread-depth", {reading("tread-depth", "wheel 1L", Dimension::Length, 4e-3),
                                          reading("tread-depth", "wheel 2R", Dimension::Length, 1.5e-3)});
    REQUIRE(low.size() == 1);
    CHECK(low.front().number == 1);
    CHECK(low.front().place == "wheel 2R");
    CHECK(low.front().si == 1.5e-3);
}

TEST_CASE("a flat tire")
{
    CHECK(hits("tire-pressure", {reading("cold-pressure", "wheel 1L", Dimension::Pressure, 0.0)}).size() ==
          1);
    CHECK(hits("tire-pressure", {reading("cold-pressure", "wheel 1L", Dimension::Pressure, 3e5)}).empty());
}

TEST_CASE("hubs: over 93 degC, or over 77 and 14 above the hottest mate")
{
    const auto hubs = [](double a, double b, double c, double d) {
        const auto hub = [](const char *place, double degC) {
            return reading("hub-temperature", place, Dimension::Temperature, celsius(degC).si());
        };
        return hits("hub-temperature",
                    {hub("wheel 1L", a), hub("wheel 1R", b), hub("wheel 2L", c), hub("wheel 2R", d)});
    };
    CHECK(hubs(44, 48, 43, 66).empty()); // 18 above its mates, but not hot: told, not held
    CHECK(hubs(60, 62, 61, 78).size() == 1);
    CHECK(hubs(60, 62, 61, 78).front().place == "wheel 2R");
    CHECK(hubs(60, 65, 61, 78).empty()); // 13 above the hottest mate
    CHECK(hubs(80, 81, 79, 82).empty());
    CHECK(hubs(60, 62, 61, 94).size() == 1); // once, though both limits are passed
}

TEST_CASE("linings, breakaway time, jaws and skin voltage")
{
    CHECK(hits("brake-linings", {reading("lining-thickness", "wheel 1L", Dimension::Length, 1.5e-3)})
              .front()
              .number == 5);
    CHECK(hits("fifth-wheel-head", {reading("head-play", "", Dimension::Length, 13e-3)}).front().number == 7);
    CHECK(hits("live-skin-check", {reading("skin-voltage", "", Dimension::Voltage, 3.0)}).front().forbids ==
          "plug");
    CHECK(hits("live-skin-check", {reading("skin-voltage", "", Dimension::Voltage, 1.0)}).empty());
}

TEST_CASE("the breakaway holds for 15 minutes, in the unit that the catalogue reads")
{
    const ReadingSpec *spec = realCatalogue().find("breakaway-battery")->reading("breakaway-hold-time");
    REQUIRE(spec != nullptr);
    REQUIRE(spec->lowSi.has_value());
    CHECK(hits("breakaway-battery", {reading(spec->slug, "", spec->dimension, *spec->lowSi)}).empty());
    CHECK(hits("breakaway-battery", {reading(spec->slug, "", spec->dimension, *spec->lowSi * 0.9)}).size() ==
          1);
}

TEST_CASE("loads against the plates")
{
    Rig rig;
    rig.ratings.gross = kilograms(3000);
    rig.ratings.axle = {kilograms(1500), kilograms(1400)};
    CHECK(hits("gross-weight", {reading("gross-weight", "", Dimension::Mass, 3001)}, rig).front().number ==
          2);
    CHECK(hits("gross-weight", {reading("gross-weight", "", Dimension::Mass, 3000)}, rig).empty());
    CHECK(hits("axle-loads", {reading("axle-load", "axle 2", Dimension::Mass, 1450)}, rig).size() == 1);
    CHECK(hits("axle-loads", {reading("axle-load", "axle 1", Dimension::Mass, 1450)}, rig).empty());
    CHECK(hits("axle-loads", {reading("axle-load", "", Dimension::Mass, 1450)}, rig)
              .empty()); // which of the two?
}

TEST_CASE("nose weight over the rating, or under the practice's low end of a weighed rig")
{
    CHECK(nose(300, 3000.0, Practice::NorthAmerica, 290.0).size() == 1);
    CHECK(nose(230, 3000.0, Practice::NorthAmerica, 290.0).size() == 1); // under 8 %: 240
    CHECK(nose(241, 3000.0, Practice::NorthAmerica, 290.0).empty());
    CHECK(nose(215, 3000.0, Practice::AustraliaNewZealand, 290.0).empty()); // 7 %: 210
    CHECK(nose(205, 3000.0, Practice::AustraliaNewZealand, 290.0).size() == 1);
    CHECK(nose(55, 1300.0, Practice::Europe, 100.0).empty()); // 4 %: 52
    CHECK(nose(50, 1300.0, Practice::Europe, 100.0).size() == 1);
    CHECK(nose(24, std::nullopt, Practice::Europe, 100.0).size() == 1);   // 25 kg whatever the rig weighs
    CHECK(nose(50, std::nullopt, Practice::NorthAmerica, 290.0).empty()); // not weighed is no hold
}

TEST_CASE("the last number counts, and a mend asks for a new one")
{
    Story story;
    story.mark(story.walk(at("2026-01-01")), "tread-depth", MarkState::Pass, at("2026-01-01")).readings = {
        reading("tread-depth", "wheel 1L", Dimension::Length, 1e-3)};
    CHECK(holdsAt("tread-depth", story, at("2025-12-31")).empty());
    CHECK(holdsAt("tread-depth", story, at("2026-01-02")).size() == 1);
    story.mend(at("2026-01-03"), "replace", {}, {"tread-depth"});
    CHECK(holdsAt("tread-depth", story, at("2026-01-04")).empty());
    story.mark(story.walk(at("2026-01-05")), "tread-depth", MarkState::Pass, at("2026-01-05")).readings = {
        reading("tread-depth", "wheel 1L", Dimension::Length, 1.2e-3)};
    CHECK(holdsAt("tread-depth", story, at("2026-01-06")).size() == 1);
    story.mark(story.walk(at("2026-01-07")), "tread-depth", MarkState::Pass, at("2026-01-07")).readings = {
        reading("tread-depth", "wheel 1L", Dimension::Length, 8e-3)};
    CHECK(holdsAt("tread-depth", story, at("2026-01-08")).empty());
}
