// SPDX-License-Identifier: Apache-2.0
// Where on the rig: a named place, or a touch on the drawing of one face.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.Rig
import Snugwalk.Sheet

ColumnLayout {
    id: root

    required property RigModel rig
    required property string standSlug
    /// {named} or {face, x, y, z} in metres; empty when not told.
    property var place: ({})

    readonly property string usual: sheet.standFace
    property string face: root.usual
    readonly property string kerb: root.rig.kerbLeft ? "left" : "right"
    readonly property var faces: [
        { slug: root.kerb, name: qsTr("kerb side", "face of the rig") }, { slug: root.rig.kerbLeft ? "right" : "left", name: qsTr("road side", "face of the rig") },
        { slug: "front", name: qsTr("front", "face of the rig") }, { slug: "rear", name: qsTr("rear", "face of the rig") },
        { slug: "top", name: qsTr("from above", "face of the rig") }, { slug: "underside", name: qsTr("underneath", "face of the rig") }]
    /// Which of x, y and z the face tells.
    readonly property var parts: root.face === "left" || root.face === "right" ? ["x", "z"] : root.face === "front" || root.face === "rear" ? ["y", "z"] : ["x", "y"]
    readonly property bool touched: root.place.face === root.face
    readonly property string words: root.place.named ? root.rig.placeTitle(root.place.named)
        : root.place.face ? Format.join([root.nameOf(root.place.face), ...root.parts.map(part => root.partWords(part))], ", ") : qsTr("not told yet")

    function nameOf(face: string): string { return root.faces.find(one => one.slug === face)?.name ?? "" }
    function partName(part: string): string {
        return part === "x" ? qsTr("from the front") : part === "y" ? qsTr("from the centre line") : qsTr("up from the ground");
    }
    function partWords(part: string): string {
        return qsTr("%1 %2", "length, from where").arg(Format.length(Math.abs(root.place[part]))).arg(root.partName(part));
    }
    /// A measured figure in the place of the touched one; it stays on the side that was touched.
    function put(part: string, text: string) {
        const metres = root.rig.metres(text);
        if (isNaN(metres))
            return;
        const change = {};
        change[part] = part === "y" && root.place.y < 0 ? -Math.abs(metres) : metres;
        root.place = Object.assign({}, root.place, change);
    }
    function named(places: var): var { return places.map(one => ({ slug: one, name: root.rig.placeTitle(one) })) }

    spacing: 4

    BodyText { text: qsTr("Where: %1", "place on the rig").arg(root.words); level: "small"; quiet: !root.place.face && !root.place.named; Layout.fillWidth: true }
    Choice { answers: root.faces; chosen: root.face; Layout.fillWidth: true; onPicked: slug => root.face = slug }
    RigSheet { id: sheet; rig: root.rig.drawn; stand: root.standSlug }
    RigView {
        id: view
        rig: root.rig.drawn
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
    GridLayout {
        visible: root.touched
        columns: root.width > Tone.px(300) ? 2 : 1
        columnSpacing: 12
        Layout.fillWidth: true
        Repeater {
            model: root.touched ? root.parts : []
            Field {
                required property string modelData
                label: qsTr("measured: %1", "from where").arg(root.partName(modelData))
                note: Format.length(Math.abs(root.place[modelData] ?? 0))
                inputMethodHints: Qt.ImhNoPredictiveText
                Layout.fillWidth: true
                Layout.preferredWidth: 10
                Layout.alignment: Qt.AlignTop
                input.onEditingFinished: root.put(modelData, text)
            }
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
