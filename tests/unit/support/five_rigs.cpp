// SPDX-License-Identifier: Apache-2.0
// The five rigs, field by field.
#include "support/five_rigs.hpp"

#include "base/units.hpp"
#include "rig/usual_fittings.hpp"

namespace snugwalk::test {
namespace {

Rig usual(RigKind kind, Practice practice, Measures measures)
{
    Rig rig;
    rig.name = "Invented";
    rig.kind = kind;
    rig.practice = practice;
    rig.measures = std::move(measures);
    rig.hitch = usualHitch(kind);
    rig.fittings = usualFittings(kind, practice);
    return rig;
}

Opening opening(const char *name, OpeningKind kind, Face face)
{
    return {name, kind, face, {metres(2), metres(0), metres(2)}, metres(0.5), metres(0.5)};
}

// Moulded roof, overrun brakes, friction coupling, sealed hubs, thirteen pins, loose waste.
Rig singleAxle()
{
    Rig rig = usual(RigKind::TravelTrailer, Practice::Europe,
                    {metres(5.2), metres(2.2), metres(1.95), metres(0.5), metres(1.3), {metres(2.7)}});
    rig.hitch = HitchType::FrictionBall;
    rig.roof = RoofKind::Moulded;
    rig.bearings = BearingKind::Sealed;
    rig.openings = {opening("window 1", OpeningKind::Window, Face::Left),
                    opening("rooflight 1", OpeningKind::Rooflight, Face::Top),
                    opening("locker 1", OpeningKind::Hatch, Face::Right)};
    rig.fittings.insert({"motor_mover", "laminated_walls"});
    rig.fittings.erase("waste_tanks");
    return rig;
}

// Membrane roof, two slide-outs, solar, grease fittings; kept without a mover or a rack.
Rig twinWithSlides()
{
    Rig rig =
        usual(RigKind::TravelTrailer, Practice::NorthAmerica,
              {metres(8.8), metres(2.44), metres(2.5), metres(0.6), metres(1.3), {metres(4.9), metres(5.8)}});
    rig.openings = {opening("vent 1", OpeningKind::Vent, Face::Top),
                    opening("window 1", OpeningKind::Window, Face::Left)};
    rig.fittings.insert({"slide_out", "solar", "grease_fittings", "laminated_walls"});
    return rig;
}

Rig fifthWheel()
{
    Rig rig =
        usual(RigKind::FifthWheel, Practice::NorthAmerica,
              {metres(10.5), metres(2.5), metres(2.9), metres(0.7), metres(0), {metres(6.6), metres(7.5)}});
    rig.openings = {opening("rooflight 1", OpeningKind::Rooflight, Face::Top)};
    rig.fittings.insert({"leveling_system", "generator", "ramp_door", "tie_down_rings"});
    return rig;
}

Rig motorhome()
{
    Rig rig =
        usual(RigKind::Motorhome, Practice::NorthAmerica,
              {metres(9.4), metres(2.5), metres(2.6), metres(0.6), metres(0), {metres(2.0), metres(6.9)}});
    rig.roof = RoofKind::Moulded;
    rig.fittings.insert({"slide_out", "leveling_system", "flat_tow_bar", "rear_rack"});
    return rig;
}

// Metal roof that lifts, lithium battery, diesel heater, no gas.
Rig van()
{
    Rig rig =
        usual(RigKind::Van, Practice::AustraliaNewZealand,
              {metres(5.9), metres(2.05), metres(2.0), metres(0.4), metres(0), {metres(1.0), metres(4.6)}});
    rig.roof = RoofKind::Metal;
    rig.fittings.insert({"lift_roof", "lithium_battery", "fuel_heater", "solar"});
    rig.fittings.erase("lp_gas");
    rig.fittings.erase("absorption_fridge");
    return rig;
}

} // namespace

const std::vector<NamedRig> &fiveRigs()
{
    static const std::vector<NamedRig> rigs = {{"single-axle", singleAxle()},
                                               {"twin-axle-slides", twinWithSlides()},
                                               {"fifth-wheel", fifthWheel()},
                                               {"motorhome", motorhome()},
                                               {"van", van()}};
    return rigs;
}

} // namespace snugwalk::test
