// SPDX-License-Identifier: Apache-2.0
// One point: its name, when in words, why, and its band under them over the whole width.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Press {
    id: root

    required property string point
    required property string title
    required property string zone
    required property real early
    required property real likely
    required property real late
    required property real alert
    required property real nominal
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
    signal opened(string point)

    readonly property string band: isNaN(root.likely) ? "" : qsTr("early %1, likely %2, late %3", "dates").arg(root.earlyText).arg(root.likelyText).arg(root.lateText)

    topPadding: 8
    bottomPadding: 8
    spoken: Format.join([root.title, root.when, root.band, root.reason], ". ")
    onClicked: root.opened(root.point)

    contentItem: ColumnLayout {
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
            alert: root.alert
            nominal: root.nominal
            firstDay: root.firstDay
            lastDay: root.lastDay
            months: root.months
            Layout.fillWidth: true
        }
    }
}
