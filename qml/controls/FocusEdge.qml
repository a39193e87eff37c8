// SPDX-License-Identifier: Apache-2.0
// Where the keyboard is: a second edge in ink, outside the control, with paper between.
import QtQuick
import Snugwalk.Style

Rectangle {
    id: root

    required property Item around
    property bool shown: root.around.activeFocus

    anchors.fill: root.around
    anchors.margins: -3
    visible: root.shown
    color: "transparent"
    radius: Tone.corner + 2
    border.width: 3
    border.color: Tone.ink
}
