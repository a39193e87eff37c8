// SPDX-License-Identifier: Apache-2.0
// The sheet of the rig: one face to choose over the plan from above, findings on both.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Controls
import Snugwalk.Models
import "geometry.js" as Geometry

ColumnLayout {
    id: root

    required property RigModel rig
    /// Stand to show while walking; "" for none.
    property string stand: ""
    /// Greatest height of each face.
    property real mostHeight: 320
    /// Height of all that is not a face.
    readonly property real around: side.trim + plan.trim + (root.stand === "" ? choice.implicitHeight + 4 : 0) + 4
    signal opened(string findingId)

    readonly property string kerb: root.rig.kerbLeft ? "left" : "right"
    readonly property string road: root.rig.kerbLeft ? "right" : "left"
    property string face: root.kerb
    readonly property var place: root.stand === "" ? null : Geometry.standPlace(root.stand, root.rig, root.rig.kerbLeft)
    readonly property string shown: root.place && root.place.face !== "top" ? root.place.face : root.face
    readonly property var faces: [
        { slug: root.kerb, name: qsTr("kerb side", "face of the rig") }, { slug: root.road, name: qsTr("road side", "face of the rig") },
        { slug: "front", name: qsTr("front", "face of the rig") }, { slug: "rear", name: qsTr("rear", "face of the rig") },
        { slug: "underside", name: qsTr("underneath", "face of the rig") }]
    readonly property var names: root.faces.map(one => ({ slug: one.slug, name: root.counted(one) }))

    function counted(one: var): string {
        const n = spots.all.filter(spot => spot.face === one.slug).length;
        return n === 0 ? one.name : qsTr("%1, %2", "face of the rig, how many findings").arg(one.name).arg(n);
    }
    function nameOf(slug: string): string {
        return root.faces.find(one => one.slug === slug)?.name ?? "";
    }

    spacing: 4

    Spots { id: spots; model: root.rig.findings }
    RigView {
        id: side
        mostHeight: root.mostHeight
        rig: root.rig
        face: root.shown
        noseLeft: root.rig.kerbLeft
        spots: spots.all
        label: root.nameOf(root.shown)
        stand: root.place && root.place.face === root.shown && root.place.level !== "" ? root.place : null
        standLabel: qsTr("stand here")
        Layout.fillWidth: true
        onOpened: id => root.opened(id)
    }
    Choice {
        id: choice
        visible: root.stand === ""
        answers: root.names
        chosen: root.shown
        Layout.fillWidth: true
        onPicked: slug => root.face = slug
    }
    RigView {
        id: plan
        mostHeight: root.mostHeight
        rig: root.rig
        face: "top"
        noseLeft: root.rig.kerbLeft
        spots: spots.all
        balloonsBelow: true
        label: qsTr("from above", "face of the rig")
        measured: false
        stand: root.place && root.place.level === "roof" ? root.place : null
        standLabel: qsTr("from the ladder, or a camera on a pole")
        Layout.fillWidth: true
        onOpened: id => root.opened(id)
    }
}
