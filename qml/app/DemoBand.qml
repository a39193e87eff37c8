// SPDX-License-Identifier: Apache-2.0
// Told on every page of the invented rig: that it is invented, and the way back.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Rectangle {
    id: root

    required property BooksModel books

    implicitHeight: column.implicitHeight + 8
    color: Tone.band
    Accessible.role: Accessible.Grouping
    Accessible.name: told.text

    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; leftMargin: Tone.margin; rightMargin: Tone.margin; verticalCenter: parent.verticalCenter }
        spacing: 0
        BodyText { id: told; text: qsTr("An invented rig to look round: nothing of it is real, and none of it gets into your own logbook."); level: "small"; font.bold: true; Layout.fillWidth: true; Layout.topMargin: 4 }
        Flow {
            id: ways
            spacing: 16
            Layout.fillWidth: true
            Layout.preferredWidth: 10
            WordButton { width: Math.min(implicitWidth, ways.width); text: qsTr("to my own logbook"); level: Tone.px(16); onClicked: root.books.leaveDemo(false) }
            WordButton { width: Math.min(implicitWidth, ways.width); text: qsTr("remove the invented rig"); level: Tone.px(16); onClicked: root.books.leaveDemo(true) }
        }
    }
    Rule { width: parent.width; anchors.bottom: parent.bottom; color: Tone.ink }
}
