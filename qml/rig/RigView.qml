// SPDX-License-Identifier: Apache-2.0
// One face of the rig with the findings on it. A tap on bare paper tells the place in metres.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls
import "geometry.js" as Geometry

Item {
    id: root

    /// Measures: bodyLength, bodyWidth, bodyHeight, floorHeight, hitchLength, axles, openings, kindSlug.
    required property var rig
    required property string face
    property bool noseLeft: true
    /// Findings of every face, as `Spots.all` gives them.
    property var spots: []
    property bool balloonsBelow: false
    property string label: ""
    property bool measured: true
    property var stand: null
    property string standLabel: ""
    property bool placing: false
    /// Without numbers a finding is its shape alone, and takes no room at the edge.
    property bool numbered: true
    property real mostHeight: 320
    signal opened(string findingId)
    signal placed(real x, real y, real z)

    readonly property var mine: root.spots.filter(one => one.face === root.face && !isNaN(one.x))
    readonly property var extent: Geometry.extent(root.face, root.rig)
    readonly property real balloonSide: Math.max(Tone.target, Tone.px(36))
    readonly property var layout: Geometry.balloons(root.mine.map(one => root.paper(one).x), root.width, root.balloonSide)
    readonly property int rows: root.mine.length === 0 || !root.numbered ? 0 : Math.ceil(root.mine.length / Math.max(1, Math.floor(root.width / root.balloonSide)))
    readonly property real balloonRoom: root.rows * root.balloonSide + (root.rows ? 6 : 0)
    readonly property real foot: foot.implicitHeight + 14
    /// Height beside the face itself, whatever its scale.
    readonly property real trim: root.balloonRoom + 10 + 14 + (root.measured ? 2 : 1) * Math.ceil(Tone.small * 1.4)
    readonly property real scale1: Math.min((root.width - 2 * Tone.margin) / root.extent.across, root.mostHeight / root.extent.up)
    readonly property var box: ({ scale: root.scale1, x: (root.width - root.extent.across * root.scale1) / 2,
        y: (root.balloonsBelow ? 0 : root.balloonRoom) + 10 })
    readonly property real low: root.box.y + root.extent.up * root.scale1

    function standOf(slug: string, rig: var, kerbLeft: bool): var {
        return Geometry.standPlace(slug, rig, kerbLeft);
    }
    function paper(spot: var): point {
        const p = Geometry.project(root.face, root.rig, root.box, root.noseLeft, spot.x, spot.y, spot.z);
        return Qt.point(p.x, p.y);
    }
    function balloonPlace(index: int): point {
        const one = root.layout[index] ?? { x: 0, row: 0 }, above = (root.rows - 1 - one.row) * root.balloonSide + root.balloonSide / 2;
        return Qt.point(one.x, root.balloonsBelow ? root.low + root.foot + root.balloonRoom - above : above);
    }

    implicitHeight: root.low + root.foot + (root.balloonsBelow ? root.balloonRoom : 0)
    Accessible.role: Accessible.Graphic
    Accessible.name: root.label === "" ? qsTr("drawing of the rig") : qsTr("drawing of the rig, %1", "which face").arg(root.label)

    RigOutline {
        anchors.fill: parent
        rig: root.rig
        face: root.face
        box: root.box
        noseLeft: root.noseLeft
        stand: root.stand
    }
    TapHandler {
        enabled: root.placing
        onTapped: point => {
            const at = Geometry.unproject(root.face, root.rig, root.box, root.noseLeft, point.position.x, point.position.y);
            root.placed(at.x, at.y, at.z);
        }
    }
    Item {
        id: foot
        readonly property point front: root.paper({ x: 0, y: 0, z: 0 })
        readonly property point rear: root.paper({ x: root.rig.bodyLength, y: 0, z: 0 })
        y: Math.round(root.low + 10)
        width: root.width
        implicitHeight: name.height + (size.visible ? size.height : 0)
        Item {
            id: size
            visible: root.measured && Math.abs(foot.rear.x - foot.front.x) > metres.implicitWidth + 40
            x: Math.round(Math.min(foot.front.x, foot.rear.x))
            width: Math.round(Math.abs(foot.rear.x - foot.front.x))
            height: visible ? metres.height : 0
            Rectangle { y: Math.round(parent.height / 2); width: parent.width; height: Tone.hair; color: Tone.quiet }
            Rectangle { y: Math.round(parent.height / 2) - 5; width: Tone.hair; height: 10; color: Tone.quiet }
            Rectangle { x: parent.width - width; y: Math.round(parent.height / 2) - 5; width: Tone.hair; height: 10; color: Tone.quiet }
            Rectangle { anchors { fill: metres; leftMargin: -8; rightMargin: -8 } color: Tone.paper }
            BodyText { id: metres; level: "small"; wrapMode: Text.NoWrap; anchors.centerIn: parent; color: Tone.quiet; text: Format.length(root.rig.bodyLength); Accessible.ignored: true }
        }
        BodyText {
            id: name
            y: size.height
            width: parent.width
            text: root.stand && root.standLabel !== "" ? root.standLabel : root.label
            level: "small"
            quiet: !root.stand
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }
    }
    Repeater {
        model: root.mine
        SpotMark {
            required property var modelData
            required property int index
            number: modelData.number
            kind: modelData.kind
            spoken: qsTr("finding %1: %2, %3", "number, what, call").arg(modelData.number).arg(modelData.title).arg(modelData.callText)
            numbered: root.numbered
            spot: root.paper(modelData)
            balloon: root.balloonPlace(index)
            onOpened: root.opened(modelData.findingId)
        }
    }
}
