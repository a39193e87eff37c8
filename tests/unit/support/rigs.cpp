// SPDX-License-Identifier: Apache-2.0
// Rigs, built field by field.
#include "support/rigs.hpp"

#include "base/units.hpp"

namespace snugwalk::test {

Rig bareRig()
{
    Rig rig;
    rig.name = "Bare";
    rig.measures = {metres(5), metres(2.2), metres(2.1), metres(0.5), metres(1.2), {metres(2.8)}};
    return rig;
}

Rig tandem()
{
    Rig rig = bareRig();
    rig.name = "Tandem";
    rig.measures = {metres(6.4), metres(2.44), metres(2.2),
                    metres(0.6), metres(1.3),  {metres(3.3), metres(4.15)}};
    rig.roofWalk = RoofWalk::No;
    rig.ratings = {kilograms(3175), {kilograms(1588), kilograms(1588)}, kilograms(400)};
    rig.tires = {"ST205/75R14", "C", 100, kilograms(800), kilopascals(345), kilopascals(340)};
    rig.wheels = {5, Torque::fromSi(135.6)};
    rig.openings = {{"vent 1",
                     OpeningKind::Vent,
                     Face::Top,
                     {metres(1.1), metres(0), metres(2.8)},
                     metres(0.4),
                     metres(0.4)},
                    {"door",
                     OpeningKind::Door,
                     Face::Right,
                     {metres(5), metres(1.22), metres(1.6)},
                     metres(0.65),
                     metres(1.9)}};
    rig.fittings = {"awning",     "baggage_doors", "belly_pan",      "breakaway_cable", "electric_brakes",
                    "entry_step", "fresh_water",   "house_battery",  "leaf_springs",    "lp_gas",
                    "mains",      "safety_chains", "seven_way_plug", "waste_tanks",     "weight_bars"};
    rig.yearly = kilometres(8000);
    return rig;
}

Rig southernTwinAxle()
{
    Rig rig = tandem();
    rig.name = "Southern";
    rig.practice = Practice::AustraliaNewZealand;
    rig.measures.width = metres(2.3);
    rig.ratings = {kilograms(2500), {kilograms(1300), std::nullopt}, kilograms(250)};
    rig.openings.front().name = "vent 2";
    return rig;
}

} // namespace snugwalk::test
