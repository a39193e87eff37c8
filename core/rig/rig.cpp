// SPDX-License-Identifier: Apache-2.0
// What follows from the fields of a rig.
#include "rig/rig.hpp"

#include <algorithm>
#include <array>

namespace snugwalk {

bool isTowed(RigKind kind)
{
    return kind != RigKind::Motorhome && kind != RigKind::Van && kind != RigKind::TruckCamper;
}

bool kerbIsLeft(const Rig &rig)
{
    // Europe drives on the right but for the islands; owners there choose `other` with left-hand traffic
    // later.
    return rig.practice == Practice::AustraliaNewZealand;
}

std::vector<std::string> wheelNames(const Rig &rig)
{
    std::vector<std::string> names;
    for (std::size_t i = 1; i <= rig.measures.axles.size(); ++i) {
        for (const char *side : {"L", "R"})
            names.push_back("wheel " + std::to_string(i) + side);
    }
    return names;
}

const std::vector<std::string> &knownFittings()
{
    static const std::vector<std::string> slugs = {
        "absorption_fridge",
        "adjustable_bearings",
        "awning",
        "baggage_doors",
        "ball_coupling",
        "belly_pan",
        "bolted_chassis",
        "breakaway_cable",
        "camper_tie_downs",
        "cassette_toilet",
        "electric_brakes",
        "engine",
        "entry_step",
        "fifth_wheel_coupling",
        "flat_tow_bar",
        "fresh_water",
        "friction_coupling",
        "fuel_heater",
        "generator",
        "grease_fittings",
        "heating_on_move",
        "hot_vents",
        "house_battery",
        "hydraulic_brakes",
        "jockey_wheel",
        "laminated_walls",
        "leaf_springs",
        "leveling_system",
        "lift_roof",
        "lithium_battery",
        "loose_tanks",
        "lp_gas",
        "mains",
        "membrane_roof",
        "motor_mover",
        "moulded_or_metal_roof",
        "multi_axle",
        "overrun_brakes",
        "ramp_door",
        "rear_rack",
        "roof_ac",
        "rooflights",
        "safety_chains",
        "screen_door",
        "sealed_bearings",
        "seven_way_plug",
        "shock_absorbers",
        "slide_out",
        "solar",
        "spare_wheel",
        "tank_sensors",
        "thirteen_pin_plug",
        "tie_down_rings",
        "toilet",
        "torsion_axle",
        "waste_tanks",
        "water_heater",
        "weight_bars",
        "wide_body",
    };
    return slugs;
}

bool isKnownFitting(std::string_view slug)
{
    const auto &all = knownFittings();
    return std::binary_search(all.begin(), all.end(), slug);
}

namespace {

void addByOpenings(const Rig &rig, std::set<std::string> &all)
{
    for (const Opening &opening : rig.openings) {
        if (opening.kind == OpeningKind::Rooflight || opening.kind == OpeningKind::Vent)
            all.insert("rooflights"); // their domes and lids are looked at alike
        if (opening.kind == OpeningKind::Hatch)
            all.insert("baggage_doors");
    }
}

// What cannot be there without another: a hub of fire without its vent, a hot tap without water.
void addImplied(std::set<std::string> &all)
{
    struct Implied {
        const char *from;
        const char *to;
    };
    static constexpr std::array implied = {Implied{"heating_on_move", "lp_gas"},
                                           Implied{"absorption_fridge", "hot_vents"},
                                           Implied{"lp_gas", "hot_vents"},
                                           Implied{"water_heater", "hot_vents"},
                                           Implied{"fuel_heater", "hot_vents"},
                                           Implied{"water_heater", "fresh_water"},
                                           Implied{"loose_tanks", "fresh_water"},
                                           Implied{"cassette_toilet", "toilet"},
                                           Implied{"lithium_battery", "house_battery"},
                                           Implied{"engine", "hydraulic_brakes"}};
    for (const Implied &rule : implied) { // in an order in which no rule comes before what it follows from
        if (all.count(rule.from) > 0)
            all.insert(rule.to);
    }
}

} // namespace

std::set<std::string> allFittings(const Rig &rig)
{
    std::set<std::string> all = rig.fittings;
    if (rig.measures.axles.size() > 1)
        all.insert("multi_axle");
    // 80 in: from this width US rule asks for clearance and identification lamps (49 CFR 571.108, from
    // memory)
    if (rig.measures.width >= Length::fromSi(80 * 0.0254))
        all.insert("wide_body");
    if (rig.hitch == HitchType::Ball || rig.hitch == HitchType::FrictionBall)
        all.insert("ball_coupling");
    if (rig.hitch == HitchType::FrictionBall)
        all.insert("friction_coupling");
    if (rig.hitch == HitchType::FifthWheel)
        all.insert("fifth_wheel_coupling");
    if (!isTowed(rig.kind) && rig.kind != RigKind::TruckCamper)
        all.insert("engine");
    if (rig.roof == RoofKind::Membrane)
        all.insert("membrane_roof");
    if (rig.roof == RoofKind::Moulded || rig.roof == RoofKind::Metal)
        all.insert("moulded_or_metal_roof");
    if (isTowed(rig.kind))
        all.insert(rig.bearings == BearingKind::Sealed ? "sealed_bearings" : "adjustable_bearings");
    addByOpenings(rig, all);
    addImplied(all);
    return all;
}

} // namespace snugwalk
