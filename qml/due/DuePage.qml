// SPDX-License-Identifier: Apache-2.0
// What is due when: bands on the line of the year, with the reasons that moved them.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Item {
    id: root

    required property DueModel due

    readonly property var months: root.due.months
    readonly property real firstDay: root.months.length ? root.months[0].day : 0
    readonly property real lastDay: root.months.length > 1 ? 2 * root.months[root.months.length - 1].day - root.months[root.months.length - 2].day : root.firstDay + 365

    ColumnLayout {
        anchors { fill: parent; leftMargin: Tone.margin; rightMargin: Tone.margin; topMargin: 6 }
        spacing: 6
        BodyText { text: qsTr("Due", "heading: what is due when"); level: "title"; Layout.fillWidth: true }
        BodyText { text: root.due.sentence; Layout.fillWidth: true }
        BodyText { text: qsTr("Line: early to late. Ring: likely. Upright: today."); level: "small"; quiet: true; Layout.fillWidth: true }
        SeasonRuler {
            id: ruler
            months: root.months
            stays: root.due.stays
            firstDay: root.firstDay
            lastDay: root.lastDay
            Layout.fillWidth: true
        }
        Item {
            Layout.fillWidth: true
            Layout.fillHeight: true
            ListView {
                id: list
                anchors { left: parent.left; right: parent.right; top: parent.top; bottom: turns.visible ? turns.top : parent.bottom }
                model: root.due.rows
                clip: true
                interactive: !Tone.gloves
                boundsBehavior: Flickable.StopAtBounds
                activeFocusOnTab: true
                keyNavigationEnabled: true
                delegate: DueRow {
                    width: ListView.view.width
                    months: root.months
                    firstDay: root.firstDay
                    lastDay: root.lastDay
                }
                FocusEdge { around: list }
            }
            MoreWord { id: turns; scroll: list; anchors { left: parent.left; right: parent.right; bottom: parent.bottom } }
        }
    }
    BodyText {
        visible: list.count === 0
        anchors { centerIn: parent; margins: Tone.margin }
        width: parent.width - 2 * Tone.margin
        text: qsTr("Nothing is worked out yet: the bands come with the first walk.")
        quiet: true
    }
}
