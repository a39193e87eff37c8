// SPDX-License-Identifier: Apache-2.0
// The end of a walk: what was not looked at first, then the counts, then the two ways to leave.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property WalkModel walk
    /// The walk is left open.
    signal leftOpen()
    /// Back on the tape, at a line that was chosen here.
    signal wentTo()

    spacing: 0

    TapeTally { id: tally; model: root.walk.tape }
    Scroll {
        spacing: 0
        Layout.fillWidth: true
        Layout.fillHeight: true
        BodyText { text: root.walk.complete ? qsTr("End of the walk") : qsTr("Stop here"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
        BodyText { text: root.walk.kindName; quiet: true; Layout.fillWidth: true; Layout.bottomMargin: 12 }
        LabelRow { label: qsTr("lines with an attention"); value: tally.found; Layout.fillWidth: true }
        LabelRow { label: qsTr("lines passed"); value: tally.passed; Layout.fillWidth: true }
        LabelRow { label: qsTr("lines not fitted"); value: tally.absent; Layout.fillWidth: true }
        LabelRow { label: qsTr("lines without a look"); value: tally.unseen.length; strong: true; Layout.fillWidth: true }
        BodyText {
            text: tally.unseen.length === 0 ? qsTr("Every line got a mark. This says what was looked at, not that nothing will fail.") : qsTr("Not looked at; press one to go there:")
            Layout.fillWidth: true
            Layout.topMargin: 14
        }
        Repeater {
            model: tally.unseen
            Press {
                id: line
                required property var modelData
                spoken: row.Accessible.name
                Layout.fillWidth: true
                Layout.leftMargin: -Tone.margin
                Layout.rightMargin: -Tone.margin
                onClicked: {
                    root.walk.goTo(line.modelData.line);
                    root.wentTo();
                }
                contentItem: TapeRow { // qmllint disable
                    id: row
                    line: line.modelData.line
                    title: line.modelData.title
                    mark: line.modelData.mark
                    summary: line.modelData.summary !== "" ? line.modelData.summary : line.modelData.standName
                    ahead: true
                    Accessible.ignored: true
                }
            }
        }
    }
    Rule { Layout.fillWidth: true }
    ColumnLayout {
        spacing: Tone.gap
        Layout.fillWidth: true
        Layout.margins: 12
        ActButton {
            text: qsTr("Leave it open")
            detail: qsTr("it goes on at the same line")
            visible: !root.walk.complete
            Layout.fillWidth: true
            onClicked: root.leftOpen()
        }
        ActButton {
            text: qsTr("Finish the walk")
            detail: tally.unseen.length === 0 ? "" : qsTr("%n line(s) stay without a look", "", tally.unseen.length)
            filled: true
            implicitHeight: Math.max(Tone.markHeight, implicitContentHeight + 20)
            Layout.fillWidth: true
            onClicked: root.walk.finish()
        }
    }
}
