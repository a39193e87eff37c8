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
        highlight: Rectangle { color: Tone.band }
        section.property: "standName"
        section.delegate: BodyText {
            required property string section
            width: ListView.view.width
            leftPadding: Tone.margin
            topPadding: 14
            bottomPadding: 4
            text: section
            level: "head"
        }
        delegate: Press {
            id: line
            required property int index
            required property string title
            required property string mark
            required property string summary
            width: ListView.view.width
            text: title
            spoken: row.Accessible.name
            onClicked: {
                root.walk.goTo(line.index);
                root.chosen();
            }
            contentItem: TapeRow { id: row; line: line.index; title: line.title; mark: line.mark; summary: line.summary; ahead: true; Accessible.ignored: true }
        }
    }
    MoreWord { id: turns; scroll: list; anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Tone.gap } }
}
