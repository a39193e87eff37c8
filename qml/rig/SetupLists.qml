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
    readonly property var roofs: [
        { slug: "membrane", name: qsTr("rubber or plastic membrane", "roof") }, { slug: "moulded", name: qsTr("moulded in one piece", "roof") },
        { slug: "metal", name: qsTr("metal sheet", "roof") }, { slug: "canvas", name: qsTr("canvas", "roof") }]
    readonly property var roofWalk: [
        { slug: "no", name: qsTr("no", "answer") }, { slug: "yes", name: qsTr("yes, by its maker's rating", "answer") },
        { slug: "unknown", name: qsTr("not known, counts as no", "answer") }]
}
