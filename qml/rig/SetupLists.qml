// SPDX-License-Identifier: Apache-2.0
// Words for the choices of the set-up form; the slugs are the core's.
import QtQuick

QtObject {
    readonly property var kinds: [
        { slug: "travel_trailer", name: qsTr("travel trailer", "kind of rig") }, { slug: "fifth_wheel", name: qsTr("fifth wheel", "kind of rig") },
        { slug: "folding_trailer", name: qsTr("folding or pop-up trailer", "kind of rig") }, { slug: "teardrop", name: qsTr("teardrop", "kind of rig") },
        { slug: "truck_camper", name: qsTr("truck camper", "kind of rig") }, { slug: "motorhome", name: qsTr("motorhome", "kind of rig") },
        { slug: "van", name: qsTr("camper van", "kind of rig") }]
    readonly property var practices: [
        { slug: "north_america", name: qsTr("North America", "practice") }, { slug: "europe", name: qsTr("Europe", "practice") },
        { slug: "australia_new_zealand", name: qsTr("Australia and New Zealand", "practice") }, { slug: "other", name: qsTr("other", "practice") }]
    readonly property var roofWalk: [
        { slug: "no", name: qsTr("no", "answer") }, { slug: "yes", name: qsTr("yes, by its maker's rating", "answer") },
        { slug: "unknown", name: qsTr("not known, counts as no", "answer") }]
    // what follows from kind, practice, sizes and roof is not asked for again
    readonly property var fittings: [
        { slug: "lp_gas", name: qsTr("LP gas", "fitting") }, { slug: "mains", name: qsTr("mains power", "fitting") },
        { slug: "house_battery", name: qsTr("house battery", "fitting") }, { slug: "solar", name: qsTr("solar", "fitting") },
        { slug: "fresh_water", name: qsTr("fresh water", "fitting") }, { slug: "waste_tanks", name: qsTr("waste tanks", "fitting") },
        { slug: "roof_ac", name: qsTr("roof air conditioner", "fitting") }, { slug: "awning", name: qsTr("awning", "fitting") },
        { slug: "slide_out", name: qsTr("slide-out", "fitting") }, { slug: "lift_roof", name: qsTr("lifting roof", "fitting") },
        { slug: "baggage_doors", name: qsTr("baggage doors", "fitting") }, { slug: "entry_step", name: qsTr("entry step", "fitting") },
        { slug: "ramp_door", name: qsTr("ramp door", "fitting") }, { slug: "rear_rack", name: qsTr("rear rack", "fitting") },
        { slug: "tie_down_rings", name: qsTr("tie-down rings", "fitting") }, { slug: "belly_pan", name: qsTr("belly pan", "fitting") },
        { slug: "leaf_springs", name: qsTr("leaf springs", "fitting") }, { slug: "electric_brakes", name: qsTr("electric brakes", "fitting") },
        { slug: "overrun_brakes", name: qsTr("overrun brakes", "fitting") }, { slug: "breakaway_cable", name: qsTr("breakaway cable", "fitting") },
        { slug: "safety_chains", name: qsTr("safety chains", "fitting") }, { slug: "weight_bars", name: qsTr("spring bars", "fitting") },
        { slug: "jockey_wheel", name: qsTr("jockey wheel", "fitting") }, { slug: "motor_mover", name: qsTr("motor mover", "fitting") },
        { slug: "grease_fittings", name: qsTr("grease fittings on the axles", "fitting") },
        { slug: "seven_way_plug", name: qsTr("seven-way plug", "fitting") }, { slug: "thirteen_pin_plug", name: qsTr("thirteen-pin plug", "fitting") },
        { slug: "flat_tow_bar", name: qsTr("flat-tow bar", "fitting") }, { slug: "camper_tie_downs", name: qsTr("camper tie-downs", "fitting") }]
}
