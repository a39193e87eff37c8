// SPDX-License-Identifier: Apache-2.0
// One line of the tape: its mark as a shape, what it is, what was written.
import QtQuick
import QtQuick.Layouts
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

    readonly property bool stacked: root.width < Tone.px(320)

    implicitHeight: grid.implicitHeight + 10
    Accessible.role: Accessible.ListItem
    Accessible.name: root.summary === "" ? root.title : qsTr("%1: %2", "line of the tape, what was written").arg(root.title).arg(root.summary)

    GridLayout {
        id: grid
        anchors { left: parent.left; right: parent.right; leftMargin: Tone.margin; rightMargin: Tone.margin; verticalCenter: parent.verticalCenter }
        columns: root.stacked ? 2 : 3
        columnSpacing: 12
        rowSpacing: 0
        Glyph { kind: root.pending ? "gap" : root.mark; size: Tone.px(22); Layout.alignment: Qt.AlignTop; Accessible.ignored: true }
        BodyText {
            text: root.title
            quiet: !root.ahead
            font.pixelSize: root.ahead ? Tone.body : Tone.small
            Layout.fillWidth: true
            Layout.preferredWidth: 12
            Accessible.ignored: true
        }
        BodyText {
            visible: root.summary !== ""
            text: root.summary
            level: "small"
            quiet: true
            horizontalAlignment: root.stacked ? Text.AlignLeft : Text.AlignRight
            Layout.fillWidth: true
            Layout.preferredWidth: 9
            Layout.column: root.stacked ? 1 : 2
            Layout.row: root.stacked ? 1 : 0
            Accessible.ignored: true
        }
    }
}
