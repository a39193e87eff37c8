// SPDX-License-Identifier: Apache-2.0
// One page further or back without a swipe: seen with gloves on, where a scroll holds more.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style

RowLayout {
    id: root

    required property Flickable scroll
    /// Height the scroll would have without this; what fits in it needs no turning.
    required property real whole
    readonly property real room: Math.max(0, root.scroll.contentHeight - root.scroll.height)

    function turn(pages: real) {
        root.scroll.contentY = Math.max(0, Math.min(root.room, root.scroll.contentY + pages * root.scroll.height * 0.8));
    }

    visible: Tone.gloves && root.scroll.contentHeight > root.whole + 1
    spacing: Tone.gap

    ActButton {
        text: qsTr("further up", "turn the page without a swipe")
        size: Tone.body
        enabled: root.scroll.contentY > 1
        Layout.fillWidth: true
        onClicked: root.turn(-1)
    }
    ActButton {
        text: qsTr("further down", "turn the page without a swipe")
        size: Tone.body
        enabled: root.scroll.contentY < root.room - 1
        Layout.fillWidth: true
        onClicked: root.turn(1)
    }
}
