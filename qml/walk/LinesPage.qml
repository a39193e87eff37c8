// SPDX-License-Identifier: Apache-2.0
// The whole tape by stand; a press goes to that line.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Item {
    id: root

    required property WalkModel walk
    signal chosen()

    ListView {
        id: list
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: turns.visible ? turns.top : parent.bottom }
        model: root.walk.tape
        currentIndex: root.walk.current
        clip: true
        interactive: !Tone.gloves
        highlightMoveDuration: 0
        delegate: Press {
            id: line
            required property int index
            required property string title
            required property string mark
            required property string summary
            required property string standName
            required property bool firstOfStand
            width: ListView.view.width
            text: title
            spoken: row.Accessible.name
            onClicked: {
                root.walk.goTo(line.index);
                root.chosen();
            }
            contentItem: Item { // qmllint disable
                implicitHeight: column.height
                Column {
                    id: column
                    width: parent.width
                    anchors.verticalCenter: parent.verticalCenter
                    BodyText { visible: line.firstOfStand; width: parent.width; leftPadding: Tone.margin; topPadding: 14; text: line.standName; level: "head"; Accessible.ignored: true }
                    TapeRow { id: row; width: parent.width; line: line.index; title: line.title; mark: line.mark; summary: line.summary; ahead: true; Accessible.ignored: true }
                }
            }
            background: Rectangle { color: line.ListView.isCurrentItem ? Tone.band : "transparent"; Rule { width: parent.width; anchors.bottom: parent.bottom } }
        }
    }
    MoreWord { id: turns; scroll: list; whole: root.height; anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Tone.gap } }
}
