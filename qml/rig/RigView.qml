// SPDX-License-Identifier: Apache-2.0
// One face of the rig with the findings on it. A tap on bare paper tells the place in metres.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Sheet

Item {
    id: root

    /// What is drawn of the rig, as models give it under `drawn` or `draft`.
    required property var rig
    required property string face
    property bool noseLeft: true
    /// Findings of every face, as `Spots.all` gives them, or places with `times` and `open`.
    property var spots: []
    property bool balloonsBelow: false
    property string label: ""
    property bool measured: true
    /// A stand to show where it is on this face; "" for none.
    property string stand: ""
    property string standLabel: ""
    property bool placing: false
    /// Without numbers a finding is its shape alone, and takes no room at the edge.
    property bool numbered: true
    property bool zoomable: false
    property real mostHeight: 320
    /// Pixels a metre at most, so that faces below each other show the same lengths alike.
    property real mostScale: Infinity
    signal opened(string findingId)
    signal placed(real x, real y, real z)

    readonly property alias area: area
    readonly property var mine: root.spots.filter(one => one.face === root.face && !isNaN(one.x))
    readonly property real balloonSide: Math.max(Tone.target, Tone.px(36))
    readonly property int rows: root.numbered ? sheet.balloonRows(root.mine.length, root.width, root.balloonSide) : 0
    readonly property real balloonRoom: root.rows * root.balloonSide + (root.rows ? 6 : 0)
    readonly property real foot: foot.implicitHeight + 6
    /// Height beside the face itself, whatever its scale.
    readonly property real trim: root.balloonRoom + 8 + (root.measured ? 2 : 1) * Math.ceil(Tone.small * 1.4)
    readonly property real ownScale: Math.max(0, Math.min((root.width - 8) / sheet.across, root.mostHeight / sheet.up))
    readonly property real scale1: Math.min(root.ownScale, root.mostScale)
    readonly property var box: ({ scale: area.scaled, x: area.origin.x, y: area.y + area.origin.y })
    readonly property real low: area.y + area.height
    /// Those in sight with their spots: all of them, unless the drawing is looked at nearer.
    readonly property var seen: root.mine.map(one => ({ one: one, spot: root.paper(one) })).filter(one => !area.near || root.isInSight(one.spot))
    readonly property var centres: root.numbered ? sheet.balloons(root.seen.map(one => one.spot), root.width, root.balloonSide, root.balloonsBelow ? root.low + root.foot : root.balloonRoom - 6, root.balloonsBelow) : []

    function paper(spot: var): point {
        if (!(sheet.across > 0)) // read, so that whoever asks is told of another rig or face
            return Qt.point(0, 0);
        const box = root.box, p = sheet.paper(spot.x, spot.y, spot.z);
        return Qt.point(box.x + p.x * box.scale, box.y + p.y * box.scale);
    }
    function isInSight(spot: point): bool {
        return spot.x >= 0 && spot.x <= root.width && spot.y >= area.y && spot.y <= root.low;
    }
    function balloonPlace(index: int): point {
        return root.centres[index] ?? Qt.point(0, 0);
    }
    function speak(one: var): string {
        return one.times > 0 ? qsTr("place %1: %2, %3", "number, where, how often and when").arg(one.number).arg(one.where).arg(one.when)
            : qsTr("finding %1: %2, %3", "number, what, call").arg(one.number).arg(one.title).arg(one.callText);
    }

    onFaceChanged: area.whole()
    implicitHeight: root.low + root.foot + (root.balloonsBelow ? root.balloonRoom : 0)
    activeFocusOnTab: root.zoomable
    Keys.enabled: root.zoomable
    Keys.onPressed: event => event.accepted = area.key(event)
    Accessible.role: Accessible.Graphic
    Accessible.name: root.label === "" ? qsTr("drawing of the rig") : qsTr("drawing of the rig, %1", "which face").arg(root.label)
    Accessible.focusable: root.zoomable

    RigSheet { id: sheet; rig: root.rig ?? ({}); face: root.face; noseLeft: root.noseLeft; stand: root.stand }
    ZoomArea {
        id: area
        y: root.balloonsBelow ? 2 : root.balloonRoom + 2
        width: root.width
        height: Math.ceil(sheet.up * root.scale1)
        fit: root.scale1
        across: sheet.across
        up: sheet.up
        active: root.zoomable
        RigOutline {
            anchors.fill: parent
            sheet: sheet
            box: ({ scale: area.scaled, x: area.origin.x, y: area.origin.y })
            z: -1
        }
        Repeater {
            model: sheet.tanks
            Digits {
                required property var modelData
                text: modelData.letter
                size: Tone.px(13)
                color: Tone.quiet
                x: Math.round(area.origin.x + modelData.x * area.scaled - width / 2)
                y: Math.round(area.origin.y + modelData.y * area.scaled - height / 2)
                visible: x > 0 && x + width < area.width && y > 0 && y + height < area.height
                Accessible.ignored: true
            }
        }
    }
    Rectangle { visible: area.near; x: area.x; y: area.y; width: area.width; height: area.height; color: "transparent"; border.width: Tone.hair; border.color: Tone.line } // only a part is seen
    FocusEdge { around: area; shown: root.zoomable && root.activeFocus }
    TapHandler {
        enabled: root.placing
        onTapped: point => {
            const box = root.box, at = sheet.place((point.position.x - box.x) / box.scale, (point.position.y - box.y) / box.scale);
            root.placed(at.x, at.y, at.z);
        }
    }
    RigFoot {
        id: foot
        y: Math.round(root.low + 2)
        width: root.width
        from: Math.min(root.paper({ x: 0, y: 0, z: 0 }).x, root.paper({ x: root.rig?.bodyLength ?? 0, y: 0, z: 0 }).x)
        to: Math.max(root.paper({ x: 0, y: 0, z: 0 }).x, root.paper({ x: root.rig?.bodyLength ?? 0, y: 0, z: 0 }).x)
        metres: root.rig?.bodyLength ?? 0
        measured: root.measured && !area.near
        text: sheet.stands && root.standLabel !== "" ? root.standLabel : root.label
        strong: sheet.stands
        tanks: root.stand === "" ? sheet.tanks : [] // on a walk the words of the line need that room
    }
    Repeater {
        model: root.numbered ? root.seen.length : 0
        Rectangle { // a leader, under every shape and balloon
            id: leader
            required property int index
            readonly property point from: root.seen[leader.index]?.spot ?? Qt.point(0, 0)
            readonly property point to: root.balloonPlace(leader.index)
            x: leader.from.x
            y: leader.from.y - height / 2
            width: Math.hypot(leader.to.x - leader.from.x, leader.to.y - leader.from.y)
            height: Tone.hair
            color: Tone.ink
            antialiasing: true
            transformOrigin: Item.Left
            rotation: Math.atan2(leader.to.y - leader.from.y, leader.to.x - leader.from.x) * 180 / Math.PI
        }
    }
    Repeater {
        model: root.seen
        SpotMark {
            required property var modelData
            required property int index
            number: modelData.one.number
            kind: modelData.one.kind
            spoken: root.speak(modelData.one)
            times: modelData.one.times ?? 0
            open: modelData.one.open ?? true
            numbered: root.numbered
            spot: modelData.spot
            balloon: root.balloonPlace(index)
            onOpened: root.opened(modelData.one.findingId)
        }
    }
}
