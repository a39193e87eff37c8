// SPDX-License-Identifier: Apache-2.0
// One place where something was found: its number on the drawing, how often, where, what, and since when.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Press {
    id: root

    /// {number, times, open, where, what, when, findingId}
    required property var place
    property bool chosen: false

    topPadding: 8
    bottomPadding: 8
    leftPadding: root.chosen ? 8 : 0
    spoken: qsTr("place %1: %2, %3, %4", "number, where, what, how often and when").arg(root.place.number).arg(root.place.where).arg(root.place.what).arg(root.place.when)

    contentItem: RowLayout { // qmllint disable
        spacing: 10
        Item {
            Layout.alignment: Qt.AlignTop
            Layout.preferredWidth: Tone.px(36)
            implicitHeight: shape.height
            EverShape { id: shape; times: root.place.times; open: root.place.open; anchors.horizontalCenter: parent.horizontalCenter }
        }
        Digits { text: root.place.number; Layout.alignment: Qt.AlignTop; Layout.topMargin: Tone.px(3); Layout.minimumWidth: Tone.px(18); Accessible.ignored: true }
        ColumnLayout {
            spacing: 1
            BodyText { text: root.place.where; font.bold: root.chosen; Layout.fillWidth: true; Accessible.ignored: true }
            BodyText { text: root.place.what; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
            BodyText { text: root.place.when; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
        }
    }
    background: Item {
        Rectangle { visible: root.chosen; width: 4; height: parent.height; color: Tone.ink }
        Rule { width: parent.width; anchors.bottom: parent.bottom }
    }
}
