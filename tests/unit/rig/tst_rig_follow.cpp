// SPDX-License-Identifier: Apache-2.0
// What follows from a rig's fields.
#include <doctest/doctest.h>

#include <algorithm>

#include "base/units.hpp"
#include "rig/usual_fittings.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("wheels in walking order")
{
    CHECK(wheelNames(tandem()) == std::vector<std::string>{"wheel 1L", "wheel 1R", "wheel 2L", "wheel 2R"});
    CHECK(wheelNames(bareRig()) == std::vector<std::string>{"wheel 1L", "wheel 1R"});
}

TEST_CASE("fittings that nobody has to type")
{
    const auto has = [](const Rig &rig, const char *fitting) { return allFittings(rig).count(fitting) > 0; };
    Rig rig = tandem();
    CHECK(has(rig, "multi_axle"));
    CHECK_FALSE(has(bareRig(), "multi_axle"));
    CHECK(has(rig, "ball_coupling"));
    CHECK(has(rig, "adjustable_bearings"));
    CHECK(has(rig, "membrane_roof"));
    CHECK_FALSE(has(bareRig(), "rooflights"));
    CHECK(has(rig, "rooflights")); // the lid of a vent is looked at like a dome
    rig.openings[0].kind = OpeningKind::Window;
    CHECK_FALSE(has(rig, "rooflights"));
    rig.openings[0].kind = OpeningKind::Rooflight;
    CHECK(has(rig, "rooflights"));
    // 80 in wide or more: 49 CFR 571.108 (from memory)
    rig.measures.width = Length::fromSi(80 * 0.0254);
    CHECK(has(rig, "wide_body"));
    rig.measures.width = metres(2.03);
    CHECK_FALSE(has(rig, "wide_body"));
    rig.bearings = BearingKind::Sealed;
    CHECK_FALSE(has(rig, "adjustable_bearings"));
    rig.hitch = HitchType::FifthWheel;
    CHECK(has(rig, "fifth_wheel_coupling"));
    CHECK_FALSE(has(rig, "ball_coupling"));
    rig.kind = RigKind::Motorhome;
    CHECK(has(rig, "engine"));
    CHECK_FALSE(has(rig, "sealed_bearings"));
}

TEST_CASE("a fitting brings what it cannot do without")
{
    const auto with = [](const char *fitting) {
        Rig rig = bareRig();
        rig.fittings = {fitting};
        return allFittings(rig);
    };
    CHECK(with("lp_gas").count("hot_vents") == 1);
    CHECK(with("fuel_heater").count("hot_vents") == 1);
    CHECK(with("water_heater").count("hot_vents") == 1);
    CHECK(with("water_heater").count("fresh_water") == 1);
    CHECK(with("heating_on_move").count("lp_gas") == 1);
    CHECK(with("heating_on_move").count("hot_vents") == 1); // over two steps
    CHECK(with("cassette_toilet").count("toilet") == 1);
    CHECK(with("loose_tanks").count("fresh_water") == 1);
    CHECK(with("lithium_battery").count("house_battery") == 1);
    CHECK(with("awning").count("hot_vents") == 0);
    Rig van = bareRig();
    van.kind = RigKind::Van;
    van.hitch = HitchType::None;
    CHECK(allFittings(van).count("hydraulic_brakes") == 1);
    Rig locker = bareRig();
    locker.openings = tandem().openings;
    locker.openings.front().kind = OpeningKind::Hatch;
    CHECK(allFittings(locker).count("baggage_doors") == 1);
}

TEST_CASE("usual fittings: known ones, and the brakes, link and plug of the country")
{
    for (int kind = 0; kind <= static_cast<int>(RigKind::Van); ++kind) {
        for (int practice = 0; practice <= static_cast<int>(Practice::Other); ++practice) {
            const auto rigKind = static_cast<RigKind>(kind);
            const auto usual = usualFittings(rigKind, static_cast<Practice>(practice));
            for (const std::string &fitting : usual)
                CHECK(isKnownFitting(fitting));
            const auto plugs = usual.count("seven_way_plug") + usual.count("thirteen_pin_plug");
            CHECK(plugs == (isTowed(rigKind) ? 1 : 0));
            CHECK(usual.count("electric_brakes") + usual.count("overrun_brakes") <= 1);
        }
    }
    const auto american = usualFittings(RigKind::TravelTrailer, Practice::NorthAmerica);
    CHECK(american.count("electric_brakes") == 1);
    CHECK(american.count("safety_chains") == 1);
    const auto european = usualFittings(RigKind::TravelTrailer, Practice::Europe);
    CHECK(european.count("overrun_brakes") == 1);
    CHECK(european.count("breakaway_cable") == 1);
    CHECK(european.count("safety_chains") == 0);
    CHECK(usualFittings(RigKind::FifthWheel, Practice::NorthAmerica).count("safety_chains") == 0);
    CHECK(usualFittings(RigKind::TruckCamper, Practice::NorthAmerica).count("camper_tie_downs") == 1);
    CHECK(usualHitch(RigKind::FifthWheel) == HitchType::FifthWheel);
    CHECK(usualHitch(RigKind::Van) == HitchType::None);
    CHECK(usualHitch(RigKind::Teardrop) == HitchType::Ball);
}

TEST_CASE("the list of fittings is sorted, since it is searched by halves")
{
    CHECK(std::is_sorted(knownFittings().begin(), knownFittings().end()));
    for (const std::string &fitting : allFittings(tandem()))
        CHECK(isKnownFitting(fitting));
    CHECK_FALSE(isKnownFitting(""));
}

TEST_CASE("what is towed")
{
    CHECK(isTowed(RigKind::TravelTrailer));
    CHECK_FALSE(isTowed(RigKind::Motorhome));
    CHECK_FALSE(isTowed(RigKind::TruckCamper));
}
