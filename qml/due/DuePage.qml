// SPDX-License-Identifier: Apache-2.0
// What is due when: bands on the line of the year, with the reasons that moved them.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Item {
    id: root

    required property DueModel due
    /// Nobody has looked at anything yet: every date is the catalogue's, and a first look comes before all lists.
    property bool fresh: false
    signal opened(string point)
    signal suppliesAsked()
    signal whatIfAsked()
    signal wentAsked()
    signal startAsked()

    readonly property var months: root.due.months
    readonly property real firstDay: root.months.length ? root.months[0].day : 0
    readonly property real lastDay: root.months.length > 1 ? 2 * root.months[root.months.length - 1].day - root.months[root.months.length - 2].day : root.firstDay + 365

    /// Where it would take much of the page, the head scrolls with the bands.
    readonly property bool cramped: head.implicitHeight > root.height * 0.4

    /// Called late: by then the page may be gone.
    function toTop() {
        if (list)
            list.contentY = list.originY - list.topMargin;
    }

    Component.onCompleted: root.due.open()

    Column {
        id: head
        parent: root.cramped ? list.contentItem : root
        x: root.cramped ? 0 : Tone.margin
        y: root.cramped ? -height : 0
        width: list.width
        topPadding: 6
        spacing: 6
        BodyText { width: parent.width; text: qsTr("Due", "heading: what is due when"); level: "title" }
        BodyText { width: parent.width; text: root.due.sentence }
        BodyText { visible: text !== ""; width: parent.width; text: root.due.moved }
        BodyText { visible: root.fresh; width: parent.width; text: qsTr("Nobody has looked at this rig yet, so everything is due at once. Begin with a first look of a quarter of an hour; dates follow from what is marked."); font.bold: true }
        ActButton { visible: root.fresh; width: parent.width; height: Math.max(Tone.target, implicitContentHeight + 20); text: qsTr("Begin with a first look"); size: Tone.body; onClicked: root.startAsked() }
        Flow {
            visible: !root.fresh
            width: parent.width
            spacing: 12
            WordButton { width: Math.min(implicitWidth, head.width); text: qsTr("what if it goes elsewhere"); onClicked: root.whatIfAsked() }
            WordButton { width: Math.min(implicitWidth, head.width); text: qsTr("what to buy for it"); onClicked: root.suppliesAsked() }
            WordButton { width: Math.min(implicitWidth, head.width); text: qsTr("how it went", "weather, roads, costs over time"); onClicked: root.wentAsked() }
        }
        DueFilters { id: filters; width: parent.width; due: root.due }
        BodyText {
            width: parent.width
            text: qsTr("Line: early to late. Ring: likely. Heavy stroke: time to look. Faint upright: by the catalogue alone. Long upright: today.")
            level: "small"
            quiet: true
        }
        SeasonRuler {
            width: parent.width
            months: root.months
            stays: root.due.stays
            firstDay: root.firstDay
            lastDay: root.lastDay
        }
    }
    ListView {
        id: list
        anchors {
            left: parent.left
            right: parent.right
            top: parent.top
            bottom: turns.visible ? turns.top : parent.bottom
            leftMargin: Tone.margin
            rightMargin: Tone.margin
            topMargin: root.cramped ? 0 : head.height
        }
        topMargin: root.cramped ? head.height : 0
        onTopMarginChanged: Qt.callLater(root.toTop) // qmllint disable
        model: root.due.rows
        clip: true
        interactive: !Tone.gloves
        boundsBehavior: Flickable.StopAtBounds
        delegate: DueRow {
            width: ListView.view.width
            months: root.months
            firstDay: root.firstDay
            lastDay: root.lastDay
            onOpened: point => root.opened(point)
        }
        BodyText {
            visible: list.count === 0
            width: parent.width
            topPadding: Tone.margin
            text: root.due.total > 0 ? qsTr("Nothing here for that choice.") : qsTr("Nothing is worked out yet: the bands come with the first walk.")
            quiet: true
        }
    }
    MoreWord { id: turns; scroll: list; whole: root.height - (root.cramped ? 0 : head.height); anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Tone.gap } }
}
