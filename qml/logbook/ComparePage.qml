// SPDX-License-Identifier: Apache-2.0
// Two walks side by side, what needs hands first.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Item {
    id: root

    required property BookModel book

    /// Until the comparison is worked out there is nothing to tell.
    readonly property bool answered: root.book.compareTitle !== "" || !root.book.comparable

    Component.onCompleted: if (root.book.compareTitle === "") root.book.compare("", "")

    Column {
        id: head
        parent: list.contentItem
        x: Tone.margin
        y: -height
        width: list.width - 2 * Tone.margin
        topPadding: 6
        bottomPadding: Tone.gap
        BodyText { width: parent.width; text: root.book.compareTitle !== "" || !root.answered ? root.book.compareTitle : qsTr("Two walks side by side"); level: "title" }
        BodyText { width: parent.width; text: root.answered ? root.book.compareSentence : "" }
        BodyText { width: parent.width; visible: root.answered && !root.book.comparable; topPadding: 4; text: qsTr("Walk round twice, on different days: then this page tells what is new, worse or mended since."); quiet: true }
        BodyText { width: parent.width; visible: text !== ""; text: root.book.comparePair; level: "small"; quiet: true }
        Repeater {
            model: root.book.rigChanges
            BodyText { required property string modelData; width: head.width; topPadding: 4; text: modelData; level: "small" }
        }
    }
    ListView {
        id: list
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: turns.visible ? turns.top : parent.bottom }
        topMargin: head.height
        onTopMarginChanged: Qt.callLater(() => list.contentY = list.originY - list.topMargin) // qmllint disable
        model: root.book.comparison
        clip: true
        interactive: !Tone.gloves
        boundsBehavior: Flickable.StopAtBounds
        delegate: CompareRow { width: ListView.view.width }
    }
    MoreWord { id: turns; scroll: list; whole: root.height; anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Tone.gap } }
}
