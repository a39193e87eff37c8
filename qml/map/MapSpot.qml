// SPDX-License-Identifier: Apache-2.0
// What lies at one place of the map: its shape, and how many there are under it.
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Press {
    id: root

    required property string shape
    required property int count

    width: Tone.target
    height: Tone.target

    MapShape {
        id: mark
        anchors.centerIn: parent
        shape: root.shape
        size: Math.min(Tone.px(24), Tone.target - 12)
    }
    Rectangle {
        visible: root.count > 1
        x: mark.x + mark.width - 4
        y: mark.y - 6
        width: number.implicitWidth + 8
        height: number.implicitHeight + 2
        radius: 4
        color: Tone.paper
        border.width: Tone.hair
        border.color: Tone.ink
        Digits { id: number; anchors.centerIn: parent; text: root.count; font.pixelSize: Tone.small; Accessible.ignored: true }
    }
}
