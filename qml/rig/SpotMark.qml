// SPDX-License-Identifier: Apache-2.0
// One finding on the drawing: its shape at the spot, a thin leader, a numbered balloon at the edge.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    required property int number
    required property string kind
    required property string spoken
    /// Paper places, in this item's parent.
    required property point spot
    required property point balloon
    property bool numbered: true
    property real balloonSize: Tone.px(32)
    signal opened()

    readonly property real run: Math.hypot(root.balloon.x - root.spot.x, root.balloon.y - root.spot.y)
    readonly property real turn: Math.atan2(root.balloon.y - root.spot.y, root.balloon.x - root.spot.x) * 180 / Math.PI

    anchors.fill: parent

    Rectangle {
        visible: root.numbered
        x: root.spot.x
        y: root.spot.y - height / 2
        width: Math.max(0, root.run - root.balloonSize / 2)
        height: Tone.hair
        color: Tone.ink
        antialiasing: true
        transformOrigin: Item.Left
        rotation: root.turn
    }
    Glyph {
        kind: root.kind
        size: Tone.px(20)
        x: root.spot.x - width / 2
        y: root.spot.y - height / 2
        Accessible.ignored: true
    }
    MouseArea {
        width: Tone.target
        height: Tone.target
        x: root.spot.x - width / 2
        y: root.spot.y - height / 2
        onClicked: root.opened()
    }
    Press {
        visible: root.numbered
        spoken: root.spoken
        width: Math.max(Tone.target, root.balloonSize)
        height: Math.max(Tone.target, root.balloonSize)
        x: root.balloon.x - width / 2
        y: root.balloon.y - height / 2
        onClicked: root.opened()
        Rectangle {
            anchors.centerIn: parent
            width: root.balloonSize
            height: root.balloonSize
            radius: root.balloonSize / 2
            color: Tone.paper
            border.width: Tone.hair + 0.5
            border.color: Tone.ink
            Digits { anchors.centerIn: parent; text: root.number; Accessible.ignored: true }
        }
    }
}
