// SPDX-License-Identifier: Apache-2.0
// Common practice, no source: a beginning for a form, changed by whoever knows the rig.
#include "rig/usual_fittings.hpp"

#include <initializer_list>

namespace snugwalk {
namespace {

using Set = std::set<std::string>;

void add(Set &to, std::initializer_list<const char *> fittings)
{
    to.insert(fittings.begin(), fittings.end());
}

// Brakes, safety link and plug by habit of the country; unbraked teardrops keep the link and the plug.
void addTowing(Set &to, RigKind kind, Practice practice)
{
    const bool braked = kind != RigKind::Teardrop;
    const bool ball = kind != RigKind::FifthWheel;
    switch (practice) {
    case Practice::NorthAmerica:
        add(to, {"seven_way_plug"});
        if (braked)
            add(to, {"electric_brakes"});
        if (ball)
            add(to, {"safety_chains"});
        return;
    case Practice::AustraliaNewZealand:
        add(to, {"thirteen_pin_plug", "jockey_wheel"});
        if (braked)
            add(to, {"electric_brakes"});
        if (ball)
            add(to, {"safety_chains"});
        return;
    case Practice::Europe:
    case Practice::Other:
        add(to, {"thirteen_pin_plug", "jockey_wheel", "breakaway_cable"});
        if (braked)
            add(to, {"overrun_brakes"});
        return;
    }
}

void addSprings(Set &to, RigKind kind, Practice practice)
{
    const bool europe = practice == Practice::Europe || practice == Practice::Other;
    if (kind == RigKind::Teardrop || europe)
        add(to, {"torsion_axle"});
    else
        add(to, {"leaf_springs"});
    if (europe)
        add(to, {"bolted_chassis", "shock_absorbers"});
}

void addLiving(Set &to, RigKind kind, Practice practice)
{
    const bool europe = practice == Practice::Europe || practice == Practice::Other;
    add(to, {"mains", "house_battery", "lp_gas"});
    if (kind == RigKind::Teardrop)
        return;
    add(to, {"fresh_water"});
    if (kind == RigKind::FoldingTrailer) {
        add(to, {"lift_roof"});
        return;
    }
    add(to, {"water_heater", "waste_tanks", "absorption_fridge", "screen_door", "entry_step"});
    add(to, {practice == Practice::NorthAmerica ? "toilet" : "cassette_toilet"});
    if (!europe)
        add(to, {"roof_ac", "awning"});
    if (practice == Practice::NorthAmerica)
        add(to, {"tank_sensors"});
}

} // namespace

HitchType usualHitch(RigKind kind)
{
    if (!isTowed(kind))
        return HitchType::None;
    return kind == RigKind::FifthWheel ? HitchType::FifthWheel : HitchType::Ball;
}

std::set<std::string> usualFittings(RigKind kind, Practice practice)
{
    Set fittings;
    if (kind != RigKind::FoldingTrailer)
        add(fittings, {"rooflights"});
    addLiving(fittings, kind, practice);
    if (isTowed(kind)) {
        addTowing(fittings, kind, practice);
        addSprings(fittings, kind, practice);
        add(fittings, {"spare_wheel"});
    }
    switch (kind) {
    case RigKind::TravelTrailer:
        add(fittings, {"baggage_doors", "belly_pan"});
        if (practice == Practice::NorthAmerica)
            add(fittings, {"weight_bars"});
        break;
    case RigKind::FifthWheel:
        add(fittings, {"baggage_doors", "belly_pan", "slide_out"});
        break;
    case RigKind::TruckCamper:
        add(fittings, {"camper_tie_downs"});
        break;
    case RigKind::Motorhome:
        add(fittings, {"baggage_doors", "shock_absorbers", "awning"});
        if (practice == Practice::NorthAmerica)
            add(fittings, {"generator"});
        break;
    case RigKind::Van:
        add(fittings, {"shock_absorbers", "awning"});
        break;
    case RigKind::FoldingTrailer:
    case RigKind::Teardrop:
        break;
    }
    return fittings;
}

} // namespace snugwalk
