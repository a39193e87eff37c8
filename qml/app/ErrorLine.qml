// SPDX-License-Identifier: Apache-2.0
// What went wrong and what to do, in words, until it is put away. Never in the way of the page.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Rectangle {
    id: root

    required property string what
    required property string act
    signal read()

    visible: root.what !== ""
    implicitHeight: root.visible ? row.implicitHeight + 12 : 0
    color: Tone.band
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.what + " " + root.act

    Rule { width: parent.width; color: Tone.ink; implicitHeight: Tone.stroke }
    RowLayout {
        id: row
        anchors { left: parent.left; right: parent.right; leftMargin: Tone.margin; rightMargin: Tone.gap; verticalCenter: parent.verticalCenter }
        ColumnLayout {
            spacing: 0
            BodyText { text: root.what; font.bold: true; Layout.fillWidth: true }
            BodyText { visible: root.act !== ""; text: root.act; level: "small"; Layout.fillWidth: true }
        }
        WordButton { text: qsTr("read", "puts a message away"); onClicked: root.read() }
    }
}
