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

    TextMetrics { id: bold; text: root.text; font.family: Tone.words; font.pixelSize: Tone.body; font.bold: true }
    TextMetrics { id: plain; text: root.text; font.family: Tone.words; font.pixelSize: Tone.body }

    contentItem: Item { // qmllint disable
        // as wide as the wider cut, so that choosing moves nothing
        implicitWidth: Math.ceil(Math.max(bold.advanceWidth, plain.advanceWidth)) + 2
        implicitHeight: word.implicitHeight
        BodyText {
            id: word
            width: parent.width
            anchors.verticalCenter: parent.verticalCenter
            text: root.text
            color: root.checked ? Tone.paper : Tone.ink
            font.bold: root.checked
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }
    }
    background: Rectangle {
        color: root.checked ? Tone.ink : Tone.paper
        radius: Tone.corner
        border.width: Tone.hair
        border.color: root.checked ? Tone.ink : Tone.quiet
    }
}
