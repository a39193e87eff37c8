// SPDX-License-Identifier: Apache-2.0
// One line of the tape: its mark as a shape, what it is, what was written.
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    required property int line
    required property string title
    required property string mark
    required property string summary
    property bool pending: false
    /// Lines ahead are larger and in ink; lines behind are quiet.
    property bool ahead: false

    implicitHeight: words.implicitHeight + 10
    Accessible.role: Accessible.ListItem
    Accessible.name: root.summary === "" ? root.title : qsTr("%1: %2", "line of the tape, what was written").arg(root.title).arg(root.summary)

    Glyph {
        kind: root.pending ? "gap" : root.mark
        size: Tone.px(22)
        x: Tone.margin
        y: words.y
        Accessible.ignored: true
    }
    Pair {
        id: words
        x: Tone.margin + Tone.px(22) + 12
        y: Math.round((root.height - implicitHeight) / 2)
        width: parent.width - x - Tone.margin
        text: root.title
        against: root.summary
        first.quiet: !root.ahead
        first.font.pixelSize: root.ahead ? Tone.body : Tone.small
        second.quiet: true
    }
}
