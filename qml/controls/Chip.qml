// SPDX-License-Identifier: Apache-2.0
// One word among several to choose from: chosen is ink with paper words, so it survives greyscale.
import QtQuick
import Snugwalk.Style

Press {
    id: root

    checkable: true
    leftPadding: 12
    rightPadding: 12
    topPadding: 6
    bottomPadding: 6

    contentItem: BodyText {
        text: root.text
        color: root.checked ? Tone.paper : Tone.ink
        font.bold: root.checked
        verticalAlignment: Text.AlignVCenter
        horizontalAlignment: Text.AlignHCenter
        Accessible.ignored: true
    }
    background: Rectangle {
        color: root.checked ? Tone.ink : Tone.paper
        radius: Tone.corner
        border.width: Tone.hair + 0.5
        border.color: root.checked ? Tone.ink : Tone.quiet
    }
}
