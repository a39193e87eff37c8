// SPDX-License-Identifier: Apache-2.0
// The sheet of the rig: one face to choose over the plan from above, findings on both, or every finding ever.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.Sheet

ColumnLayout {
    id: root

    required property RigModel rig
    /// Stand to show while walking; "" for none.
    property string stand: ""
    /// Greatest height of each face.
    property real mostHeight: 320
    /// Height of all that is not a face.
    readonly property real around: side.trim + plan.trim + (root.stand === "" ? choice.implicitHeight + tools.implicitHeight + 8 : 0) + 4
    /// Whether every place where something was ever found is drawn, in place of what is open.
    property bool ever: false
    /// The place pressed last, by its number.
    property int chosen: 0
    /// Whether a finger moves a drawing, so that the page keeps still.
    readonly property bool held: side.area.held || plan.area.held
    signal opened(string findingId)

    readonly property string kerb: root.rig.kerbLeft ? "left" : "right"
    readonly property string road: root.rig.kerbLeft ? "right" : "left"
    property string face: root.kerb
    readonly property string shown: sheet.standFace !== "" && sheet.standFace !== "top" ? sheet.standFace : root.face
    // seen from the side and from above, what lies below each other is one place
    readonly property real alike: /^(left|right|underside)$/.test(root.shown) ? Math.min(side.ownScale, plan.ownScale) : Infinity
    readonly property var marks: root.ever ? Array.from(root.rig.everPlaces) : spots.all
    readonly property var faces: [
        { slug: root.kerb, name: qsTr("kerb side", "face of the rig") }, { slug: root.road, name: qsTr("road side", "face of the rig") },
        { slug: "front", name: qsTr("front", "face of the rig") }, { slug: "rear", name: qsTr("rear", "face of the rig") },
        { slug: "underside", name: qsTr("underneath", "face of the rig") }]
    readonly property var names: root.faces.map(one => ({ slug: one.slug, name: root.counted(one) }))

    function counted(one: var): string {
        const n = root.marks.filter(spot => spot.face === one.slug).length;
        return n === 0 ? one.name : qsTr("%1, %2", "face of the rig, how many findings").arg(one.name).arg(n);
    }
    function nameOf(slug: string): string {
        return root.faces.find(one => one.slug === slug)?.name ?? "";
    }
    // a place is told in the list; a finding opens
    function press(id: string) {
        if (root.ever)
            root.chosen = root.marks.find(one => one.findingId === id)?.number ?? 0;
        else
            root.opened(id);
    }

    spacing: 4
    onStandChanged: root.ever = false
    onEverChanged: root.chosen = 0

    Spots { id: spots; model: root.rig.findings }
    RigSheet { id: sheet; rig: root.rig.drawn; stand: root.stand }
    RigView {
        id: side
        mostHeight: root.mostHeight
        mostScale: root.alike
        rig: root.rig.drawn
        face: root.shown
        noseLeft: root.rig.kerbLeft
        spots: root.marks
        label: root.nameOf(root.shown)
        stand: root.stand
        standLabel: qsTr("stand here")
        zoomable: root.stand === ""
        Layout.fillWidth: true
        onOpened: id => root.press(id)
    }
    Choice {
        id: choice
        visible: root.stand === ""
        answers: root.names
        chosen: root.shown
        Layout.fillWidth: true
        onPicked: slug => root.face = slug
    }
    ZoomRow {
        id: tools
        visible: root.stand === ""
        areas: [side.area, plan.area]
        ever: root.ever
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        onEverAsked: on => root.ever = on
    }
    RigView {
        id: plan
        mostHeight: root.mostHeight
        mostScale: root.alike
        rig: root.rig.drawn
        face: "top"
        noseLeft: root.rig.kerbLeft
        spots: root.marks
        balloonsBelow: true
        label: qsTr("from above", "face of the rig")
        measured: false
        stand: sheet.standLevel === "roof" ? root.stand : ""
        standLabel: qsTr("from the ladder, or a camera on a pole")
        zoomable: root.stand === ""
        Layout.fillWidth: true
        onOpened: id => root.press(id)
    }
}
