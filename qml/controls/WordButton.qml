// SPDX-License-Identifier: Apache-2.0
// An underlined word that does something.
import QtQuick
import Snugwalk.Style

Press {
    id: root

    property bool strong: false
    property int level: Tone.body

    opacity: root.enabled ? 1 : 0.5
    leftPadding: 4
    rightPadding: 4

    contentItem: BodyText {
        text: root.text
        font.pixelSize: root.level
        font.bold: root.strong
        font.underline: true
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
    background: Rectangle { color: root.down ? Tone.line : "transparent"; radius: Tone.corner }
}
