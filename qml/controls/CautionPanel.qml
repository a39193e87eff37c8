// SPDX-License-Identifier: Apache-2.0
// What can hurt here, one short line each, on every point that carries the code; never in a scroll.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style

Rectangle {
    id: root

    required property var lines

    implicitHeight: box.implicitHeight + 14
    color: Tone.cautionPaper
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.lines.join(" ")

    StripeBar { height: parent.height }
    ColumnLayout {
        id: box
        anchors { left: parent.left; right: parent.right; leftMargin: 24; rightMargin: 12; verticalCenter: parent.verticalCenter }
        spacing: 2
        Repeater {
            model: root.lines
            BodyText {
                required property string modelData
                text: modelData
                level: "small"
                color: Tone.cautionInk
                font.bold: true
                Layout.fillWidth: true
            }
        }
    }
}
