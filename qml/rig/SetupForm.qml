// SPDX-License-Identifier: Apache-2.0
// A rig's first sheet: what it is and how big. Faults come back to the field they belong to.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Scroll {
    id: root

    /// Faults as {field, what, act}.
    property var problems: []
    property string units: "si"
    /// {slug, name} of what can be fitted.
    property var fittingChoices: []
    /// Gives the fittings such a rig usually has, by kind and practice.
    property var usual: (kind, practice) => []
    property bool everything: false

    readonly property var usualNow: kind.chosen === "" || practice.chosen === "" ? [] : root.usual.call(root, kind.chosen, practice.chosen)
    readonly property var offered: root.everything ? root.fittingChoices : root.fittingChoices.filter(one => root.usualNow.indexOf(one.slug) >= 0 || fittings.chosen.indexOf(one.slug) >= 0)
    property bool first: true
    signal sent(var rig)
    signal joinAsked()

    readonly property string example: root.units === "us" ? qsTr("such as 21 ft 6 in or 6.55 m") : qsTr("such as 6.4 m or 21 ft")
    readonly property var sizes: [
        { key: "length", name: qsTr("Length of the body, without the drawbar") }, { key: "width", name: qsTr("Width of the body") },
        { key: "height", name: qsTr("Height of the body, floor to roof") }, { key: "floor_height", name: qsTr("Floor above the ground") },
        { key: "hitch_length", name: qsTr("Coupling to the front of the body") }]

    onUsualNowChanged: fittings.chosen = root.usualNow

    function fault(field: string): string {
        const one = root.problems.find(p => p.field === field || p.field === "measures." + field);
        return one ? one.what + (one.act ? ": " + one.act : "") : "";
    }
    function send() {
        const rig = { name: name.text, kind: kind.chosen, practice: practice.chosen, roof_walk: roof.chosen,
            fittings: fittings.chosen, axles: axles.text.split(/[;,]\s+|;/).filter(one => one.trim() !== "") };
        for (let i = 0; i < sizes.count; ++i)
            rig[root.sizes[i].key] = (sizes.itemAt(i) as Field).text;
        root.sent(rig);
    }

    spacing: 14

    BodyText { text: root.first ? qsTr("Your rig") : qsTr("Another rig"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 4 }
    BodyText { text: qsTr("The drawing and the points to look at are made from this. Measures can be put right later."); quiet: true; Layout.fillWidth: true }
    WordButton { visible: root.first; text: qsTr("or take part in a rig of another device"); Layout.fillWidth: true; onClicked: root.joinAsked() }
    Field { id: name; label: qsTr("Name", "of the rig"); problem: root.fault("name"); Layout.fillWidth: true }
    Choice { id: kind; label: qsTr("Kind", "of rig"); answers: lists.kinds; problem: root.fault("kind"); Layout.fillWidth: true; onPicked: slug => chosen = slug }
    Choice {
        id: practice
        label: qsTr("Practice: whose habits its lamps, plugs and gas follow")
        answers: lists.practices
        problem: root.fault("practice")
        Layout.fillWidth: true
        onPicked: slug => chosen = slug
    }
    Repeater {
        id: sizes
        model: root.sizes
        Field {
            required property var modelData
            label: modelData.name
            note: root.example
            problem: root.fault(modelData.key)
            Layout.fillWidth: true
        }
    }
    Field {
        id: axles
        label: qsTr("Axles, each aft of the front of the body")
        note: root.units === "us" ? qsTr("such as 10 ft 10 in; 13 ft 7 in") : qsTr("such as 3.3 m; 4.15 m")
        problem: root.fault("axles")
        Layout.fillWidth: true
    }
    Choice {
        id: roof
        label: qsTr("May the roof carry a person?")
        answers: lists.roofWalk
        problem: root.fault("roof_walk")
        Layout.fillWidth: true
        onPicked: slug => chosen = slug
    }
    Chooser { id: fittings; visible: root.offered.length > 0; label: qsTr("Fitted to it"); answers: root.offered; Layout.fillWidth: true }
    WordButton { visible: !root.everything; text: qsTr("more that may be fitted"); Layout.fillWidth: true; onClicked: root.everything = true }
    BodyText {
        visible: root.problems.length > 0
        text: qsTr("%n answer(s) to put right, told above", "", root.problems.length)
        font.bold: true
        Layout.fillWidth: true
    }
    ActButton { text: qsTr("Draw it"); filled: true; implicitHeight: Tone.markHeight; Layout.fillWidth: true; onClicked: root.send() }

    SetupLists { id: lists }
}
