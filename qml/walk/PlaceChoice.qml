// SPDX-License-Identifier: Apache-2.0
// Where on the rig: a named place, or a touch on the drawing of one face.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.Rig

ColumnLayout {
    id: root

    required property RigModel rig
    required property string standSlug
    /// {named} or {face, x, y, z} in metres; empty when not told.
    property var place: ({})

    readonly property string usual: view.standOf(root.standSlug, root.rig, root.rig.kerbLeft).face
    property string face: root.usual
    readonly property string kerb: root.rig.kerbLeft ? "left" : "right"
    readonly property var faces: [
        { slug: root.kerb, name: qsTr("kerb side", "face of the rig") }, { slug: root.rig.kerbLeft ? "right" : "left", name: qsTr("road side", "face of the rig") },
        { slug: "front", name: qsTr("front", "face of the rig") }, { slug: "rear", name: qsTr("rear", "face of the rig") },
        { slug: "top", name: qsTr("from above", "face of the rig") }, { slug: "underside", name: qsTr("underneath", "face of the rig") }]
    readonly property string words: root.place.named ? root.place.named
        : root.place.face ? qsTr("%1 from the front, %2 up", "lengths").arg(Format.length(root.place.x)).arg(Format.length(root.place.z)) : qsTr("not told yet")

    function named(places: var): var { return places.map(one => ({ slug: one, name: one })) }

    spacing: 4

    BodyText { text: qsTr("Where: %1", "place on the rig").arg(root.words); level: "small"; quiet: !root.place.face && !root.place.named; Layout.fillWidth: true }
    Choice { answers: root.faces; chosen: root.face; Layout.fillWidth: true; onPicked: slug => root.face = slug }
    RigView {
        id: view
        rig: root.rig
        face: root.face
        noseLeft: root.rig.kerbLeft
        label: qsTr("touch the spot")
        measured: false
        placing: true
        mostHeight: 240
        Layout.fillWidth: true
        onPlaced: (x, y, z) => root.place = { face: root.face, x: x, y: y, z: z }
        Rectangle {
            readonly property point spot: root.place.face === root.face ? view.paper(root.place) : Qt.point(-99, -99)
            visible: root.place.face === root.face
            x: spot.x - 12
            y: spot.y - 12
            width: 24
            height: 24
            radius: 12
            color: "transparent"
            border.width: 3
            border.color: Tone.ink
            Rectangle { anchors.centerIn: parent; width: 4; height: 4; radius: 2; color: Tone.ink }
        }
    }
    Choice {
        label: qsTr("or at a named place")
        answers: root.named(root.rig.placeNames)
        visible: root.rig.placeNames.length > 0
        chosen: root.place.named ?? ""
        Layout.fillWidth: true
        onPicked: slug => root.place = { named: slug }
    }
}
