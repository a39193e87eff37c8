// SPDX-License-Identifier: Apache-2.0
// The whole tape by stand, searched and sifted; a press goes to that line.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Item {
    id: root

    required property WalkModel walk
    signal chosen()

    clip: true

    readonly property var marks: [
        { slug: "", name: qsTr("all", "lines of a walk") },
        { slug: "left", name: qsTr("left, %1", "lines without a mark, how many").arg(sift.counted("left")) },
        { slug: "attention", name: qsTr("attention, %1", "lines with that mark, how many").arg(sift.counted("attention")) },
        { slug: "pass", name: qsTr("pass, %1", "lines with that mark, how many").arg(sift.counted("pass")) },
        { slug: "could_not_look", name: qsTr("could not look, %1", "lines with that mark, how many").arg(sift.counted("could_not_look")) },
        { slug: "not_fitted", name: qsTr("not fitted, %1", "lines with that mark, how many").arg(sift.counted("not_fitted")) }]
    readonly property var offered: root.marks.filter(one => one.slug === "" || one.slug === "left" || one.slug === sift.mark || sift.counted(one.slug) > 0)
    readonly property var places: root.withEvery(sift.stands)
    property bool byStand: false

    function withEvery(stands: var): var { return [{ slug: "", name: qsTr("every stand") }, ...stands] }

    function show() {
        const at = sift.found.findIndex(one => one.line === root.walk.current);
        if (at >= 0)
            list.positionViewAtIndex(at, ListView.Center);
    }

    TapeTally { id: tally; model: root.walk.tape; onRowsChanged: Qt.callLater(root.show) } // qmllint disable
    LineSift { id: sift; rows: Array.from(tally.rows) }

    ListView {
        id: list
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: turns.visible ? turns.top : parent.bottom }
        model: sift.found
        clip: true
        interactive: !Tone.gloves
        topMargin: asks.height + 12
        delegate: Press {
            id: line
            required property var modelData
            readonly property bool here: modelData.line === root.walk.current
            width: ListView.view.width
            text: modelData.title
            spoken: row.Accessible.name
            onClicked: {
                root.walk.goTo(line.modelData.line);
                root.chosen();
            }
            contentItem: Item { // qmllint disable
                implicitHeight: column.height
                Column {
                    id: column
                    width: parent.width
                    anchors.verticalCenter: parent.verticalCenter
                    BodyText { visible: line.modelData.firstOfStand; width: parent.width; leftPadding: Tone.margin; topPadding: 14; text: line.modelData.standName; level: "head"; Accessible.ignored: true }
                    TapeRow { id: row; width: parent.width; line: line.modelData.line; title: line.modelData.title; mark: line.modelData.mark; summary: line.modelData.summary; ahead: true; Accessible.ignored: true }
                }
            }
            background: Rectangle { color: line.here ? Tone.band : "transparent"; Rule { width: parent.width; anchors.bottom: parent.bottom } }
        }
    }
    // goes with the list, above its first line
    ColumnLayout {
        id: asks
        parent: list.contentItem
        x: Tone.margin
        y: -height - 12
        width: list.width - 2 * Tone.margin
        spacing: 6
        Field { label: qsTr("Search the lines"); Layout.fillWidth: true; Layout.topMargin: 6; onEdited: text => sift.words = text }
        Choice { answers: root.offered; chosen: sift.mark; Layout.fillWidth: true; onPicked: slug => sift.mark = slug }
        Choice { visible: root.byStand; label: qsTr("Stand"); answers: root.places; chosen: sift.stand; Layout.fillWidth: true; onPicked: slug => sift.stand = slug }
        WordButton {
            visible: sift.stands.length > 1
            text: root.byStand ? qsTr("every stand") : qsTr("only one stand")
            Layout.fillWidth: true
            onClicked: { root.byStand = !root.byStand; sift.stand = "" }
        }
        BodyText {
            text: sift.found.length === 0 ? qsTr("No line of this walk is like that.") : qsTr("%n line(s)", "of a walk", sift.found.length)
            level: "small"
            quiet: true
            Layout.fillWidth: true
        }
    }
    MoreWord { id: turns; scroll: list; whole: root.height; anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Tone.gap } }
}
