// SPDX-License-Identifier: Apache-2.0
// One finding on the drawing: its shape at the spot, a numbered balloon at the edge; the leader lies below.
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
    /// How often something was found here; 0 for a finding of its own.
    property int times: 0
    property bool open: true
    property real balloonSize: Tone.px(32)
    signal opened()

    anchors.fill: parent

    Glyph {
        visible: root.times === 0
        kind: root.kind
        size: Tone.px(20)
        x: root.spot.x - width / 2
        y: root.spot.y - height / 2
        Accessible.ignored: true
    }
    EverShape {
        visible: root.times > 0
        times: root.times
        open: root.open
        x: root.spot.x - width / 2
        y: root.spot.y - height / 2
    }
    Item { // lets a drag through to what lies below
        width: Tone.target
        height: Tone.target
        x: root.spot.x - width / 2
        y: root.spot.y - height / 2
        TapHandler { onTapped: root.opened() }
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
