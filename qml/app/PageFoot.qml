// SPDX-License-Identifier: Apache-2.0
// The foot of a page that one came to: the way back, and the emergency card.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Rectangle {
    id: root

    property bool backable: true
    signal back()
    signal emergencyAsked()

    implicitHeight: row.implicitHeight + 8
    color: Tone.paper

    Rule { width: parent.width }
    RowLayout {
        id: row
        anchors { left: parent.left; right: parent.right; leftMargin: Tone.margin - 4; rightMargin: Tone.margin - 4; verticalCenter: parent.verticalCenter }
        WordButton { visible: root.backable; text: qsTr("back", "to where one was"); onClicked: root.back() }
        Item { Layout.fillWidth: true }
        WordButton { text: qsTr("emergency", "opens the emergency card"); strong: true; onClicked: root.emergencyAsked() }
    }
}
