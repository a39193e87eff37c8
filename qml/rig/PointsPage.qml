// SPDX-License-Identifier: Apache-2.0
// The points of this rig: the owner's own, hidden ones, and how often each is looked at.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Item {
    id: root

    required property PointsModel points
    signal addAsked()

    property string open: ""

    Component.onCompleted: root.points.filter("")

    Column {
        id: head
        parent: list.contentItem
        x: Tone.margin
        y: -height
        width: list.width - 2 * Tone.margin
        topPadding: 6
        bottomPadding: Tone.gap
        spacing: 6
        BodyText { width: parent.width; text: qsTr("Points of this rig"); level: "title" }
        BodyText { width: parent.width; text: root.points.sentence; quiet: true }
        Field { width: parent.width; label: qsTr("Find a point by a word"); onEdited: text => root.points.filter(text) }
        WordButton { width: Math.min(implicitWidth, head.width); text: qsTr("add a point of your own"); onClicked: root.addAsked() }
    }
    ListView {
        id: list
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: turns.visible ? turns.top : parent.bottom }
        topMargin: head.height
        onTopMarginChanged: Qt.callLater(() => list.contentY = list.originY - list.topMargin) // qmllint disable
        model: root.points.rows
        clip: true
        interactive: !Tone.gloves
        boundsBehavior: Flickable.StopAtBounds
        section.property: "zone"
        delegate: PointRow {
            width: ListView.view.width
            open: root.open === point
            points: root.points
            onToggledOpen: root.open = root.open === point ? "" : point
        }
    }
    MoreWord { id: turns; scroll: list; whole: root.height; anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Tone.gap } }
}
