// SPDX-License-Identifier: Apache-2.0
// One point: its name, when in words, why, and its band under them over the whole width.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    required property string title
    required property string zone
    required property real early
    required property real likely
    required property real late
    required property string earlyText
    required property string likelyText
    required property string lateText
    required property string when
    required property string reason
    required property bool pastDue
    required property string kind
    property var months: []
    property real firstDay: 0
    property real lastDay: 1

    readonly property string band: isNaN(root.likely) ? "" : qsTr("early %1, likely %2, late %3", "dates").arg(root.earlyText).arg(root.likelyText).arg(root.lateText)

    implicitHeight: column.implicitHeight + 16
    Accessible.role: Accessible.ListItem
    Accessible.name: Format.join([root.title, root.when, root.band, root.reason], ". ")

    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; top: parent.top; topMargin: 8 }
        spacing: 1
        Pair {
            text: root.title
            against: root.when
            first.font.bold: root.pastDue
            second.font.bold: root.pastDue
            Layout.fillWidth: true
        }
        BodyText { visible: text !== ""; text: root.reason; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
        BandLine {
            visible: dated
            early: root.early
            likely: root.likely
            late: root.late
            firstDay: root.firstDay
            lastDay: root.lastDay
            months: root.months
            Layout.fillWidth: true
        }
    }
}
