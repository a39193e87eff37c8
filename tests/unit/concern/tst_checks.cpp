// SPDX-License-Identifier: Apache-2.0
// Rules that take more than one number: mates, plates, tires, nose weight, descents.
#include <doctest/doctest.h>

#include "../due/story.hpp"
#include "concern/checks.hpp"
#include "concern/state.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

Reading hub(const char *place, double kelvin)
{
    return {"hub-temperature", place, Dimension::Temperature, kelvin, ""};
}

Reading kg(const std::string &slug, const std::string &place, double si)
{
    return {slug, place, Dimension::Mass, si, ""};
}

std::size_t count(const Story &story, const std::string &point)
{
    const RigHistory history = story.history();
    return holdsByReading(ConcernContext(realCatalogue(), history, at("2026-01-02")),
                          *realCatalogue().find(point))
        .size();
}

void read(Story &story, const std::string &point, std::vector<Reading> readings)
{
    story.mark(story.walk(at("2026-01-01")), point, MarkState::Pass, at("2026-01-01")).readings =
        std::move(readings);
}

std::size_t noseHolds(Practice practice, double nose, double gross)
{
    Story story;
    story.rig().practice = practice;
    read(story, "gross-weight", {kg("gross-weight", "", gross)});
    read(story, "nose-weight", {kg("nose-weight", "", nose)});
    return count(story, "nose-weight");
}

constexpr double fahrenheit(double f) { return (f + 459.67) * 5.0 / 9.0; }

} // namespace

TEST_CASE("a hub over 170 degF and 25 degF above its mates: each side of both")
{
    // Common practice, no source; the stricter of 170 degF and 77 degC is 170 degF
    const auto holds = [](double hot, double mate) {
        Story story;
        read(story, "hub-temperature", {hub("wheel 1L", hot), hub("wheel 1R", mate)});
        return count(story, "hub-temperature") == 1;
    };
    CHECK(holds(fahrenheit(170.1), fahrenheit(145.0)));
    CHECK_FALSE(holds(fahrenheit(169.9), fahrenheit(140.0)));
    CHECK_FALSE(holds(fahrenheit(172.0), fahrenheit(147.1)));
    CHECK(holds(fahrenheit(172.0), fahrenheit(146.9)));
}

TEST_CASE("after a long downhill all hot alike is not a hold; one hotter than the rest is")
{
    const auto holds = [](double odd, bool descent) {
        Story story;
        if (descent)
            story.happening(at("2026-01-01", -20), "long_downhill");
        read(story, "hub-temperature",
             {hub("wheel 1L", 273.15 + 110), hub("wheel 1R", 273.15 + 108), hub("wheel 2L", odd)});
        return count(story, "hub-temperature");
    };
    CHECK(holds(273.15 + 105, false) == 3);
    CHECK(holds(273.15 + 105, true) == 0);
    CHECK(holds(273.15 + 140, true) > 0);
    Story late; // two hours later they should have cooled
    late.happening(at("2026-01-01", -120), "long_downhill");
    read(late, "hub-temperature", {hub("wheel 1L", 273.15 + 110), hub("wheel 1R", 273.15 + 108)});
    CHECK(count(late, "hub-temperature") == 2);
}

TEST_CASE("a wheel's load against its tire at the pressure it has")
{
    Story story;
    story.rig().tires.maxLoad = kilograms(1000);
    story.rig().tires.maxPressure = kilopascals(450);
    read(story, "wheel-loads", {kg("wheel-load", "wheel 1L", 1000), kg("wheel-load", "wheel 1R", 1001)});
    CHECK(count(story, "wheel-loads") == 1);
    read(story, "tire-pressure", {{"cold-pressure", "wheel 1L", Dimension::Pressure, 360e3, ""}});
    CHECK(count(story, "wheel-loads") == 2); // 0.8 of the pressure carries 0.837 of the load
}

TEST_CASE("nose weight by practice: at the low end nothing, under it a hold")
{
    // 8 % North America, 7 % Australia and New Zealand, 4 % and 25 kg Europe: common practice, no source
    CHECK(noseHolds(Practice::NorthAmerica, 240.0, 3000.0) == 0);
    CHECK(noseHolds(Practice::NorthAmerica, 239.9, 3000.0) == 1);
    CHECK(noseHolds(Practice::AustraliaNewZealand, 210.0, 3000.0) == 0);
    CHECK(noseHolds(Practice::AustraliaNewZealand, 209.9, 3000.0) == 1);
    CHECK(noseHolds(Practice::Europe, 52.0, 1300.0) == 0);
    CHECK(noseHolds(Practice::Europe, 51.9, 1300.0) == 1);
    CHECK(noseHolds(Practice::Europe, 25.0, 500.0) == 0);
    CHECK(noseHolds(Practice::Europe, 24.9, 500.0) == 1); // 4 % would be 20 kg
    CHECK(noseHolds(Practice::Other, 1.0, 3000.0) == 0);
}

TEST_CASE("a European rig at 5 % nose weight draws no hold")
{
    for (const double gross : {750.0, 1300.0, 2000.0, 3500.0})
        CHECK(noseHolds(Practice::Europe, 0.05 * gross, gross) == 0);
}

TEST_CASE("not weighed is could not look, not a hold")
{
    Story story;
    const Id walk = story.walk(at("2026-01-01"), "before_road", {"nose-weight", "pull-away-lap"});
    story.mark(walk, "nose-weight", MarkState::CouldNotLook, at("2026-01-01"));
    story.mark(walk, "pull-away-lap", MarkState::CouldNotLook, at("2026-01-01"));
    const RigHistory history = story.history();
    const LocalTime now = at("2026-01-02");
    const RigState state = stateOf(realCatalogue(), history, dueBands(realCatalogue(), history, now), now);
    REQUIRE(state.holds.size() == 1);
    CHECK(state.holds[0].hit.point == "pull-away-lap");
    CHECK(state.couldNotLook.size() == 2);
}

TEST_CASE("after a kerb strike its points of the road hold, but not the wear that shows 200 miles on")
{
    Story story;
    story.happening(at("2026-01-01"), "kerb_strike");
    const RigHistory history = story.history();
    const ConcernContext context(realCatalogue(), history, at("2026-01-02"));
    CHECK(holdsByEvent(context, *realCatalogue().find("wheel-rims")).size() == 1);
    CHECK(holdsByEvent(context, *realCatalogue().find("wheel-rims")).front().number == 15);
    CHECK(holdsByEvent(context, *realCatalogue().find("wear-pattern")).empty());
    CHECK(holdsByEvent(context, *realCatalogue().find("roof-membrane")).empty());
}

TEST_CASE("after a flood the mains and the gas have holds of their own")
{
    Story story;
    story.happening(at("2026-01-01"), "flood");
    const RigHistory history = story.history();
    const ConcernContext context(realCatalogue(), history, at("2026-01-02"));
    CHECK(holdsByEvent(context, *realCatalogue().find("live-skin-check")).front().forbids == "plug");
    CHECK(holdsByEvent(context, *realCatalogue().find("gas-leak-record")).front().forbids == "light");
}
