// SPDX-License-Identifier: Apache-2.0
// One finding in the parts list of the drawing: shape, number, what, where, and its call in words.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Press {
    id: root

    required property string findingId
    required property int number
    required property string kind
    required property string title
    required property string detail
    required property string place
    required property string callText
    signal opened(string findingId)

    readonly property bool narrow: root.width < Tone.px(340)

    topPadding: 8
    bottomPadding: 8
    spoken: qsTr("finding %1: %2, %3, %4", "number, what, how bad, call").arg(root.number).arg(root.title).arg(root.detail).arg(root.callText)
    onClicked: root.opened(root.findingId)

    contentItem: GridLayout {
        columns: root.narrow ? 3 : 4
        columnSpacing: 10
        rowSpacing: 2
        Glyph { kind: root.kind; size: Tone.px(26); Layout.alignment: Qt.AlignTop; Accessible.ignored: true }
        Digits { text: root.number; Layout.alignment: Qt.AlignTop; Layout.topMargin: Tone.px(3); Layout.minimumWidth: Tone.px(18); Accessible.ignored: true }
        ColumnLayout {
            spacing: 1
            BodyText { text: root.title; Layout.fillWidth: true; Accessible.ignored: true }
            BodyText { visible: text !== ""; text: root.detail; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
            BodyText { visible: text !== ""; text: root.place; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
        }
        BodyText {
            text: root.callText
            level: "small"
            font.bold: root.kind === "hold"
            horizontalAlignment: root.narrow ? Text.AlignLeft : Text.AlignRight
            Layout.row: root.narrow ? 1 : 0
            Layout.column: root.narrow ? 2 : 3
            Layout.preferredWidth: root.narrow ? -1 : Tone.px(104)
            Layout.fillWidth: root.narrow
            Layout.alignment: Qt.AlignTop
            Accessible.ignored: true
        }
    }
    background: Item { Rule { width: parent.width; anchors.bottom: parent.bottom } }
}
