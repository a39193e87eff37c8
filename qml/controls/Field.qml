// SPDX-License-Identifier: Apache-2.0
// One thing to type: its name above, a line to write on, a note or what is wrong below.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Snugwalk.Style

ColumnLayout {
    id: root

    required property string label
    property alias text: input.text
    property alias inputMethodHints: input.inputMethodHints
    property alias input: input
    property string note: ""
    property string problem: ""
    property bool numeric: false
    signal edited(string text)
    signal accepted()

    spacing: 2

    BodyText { text: root.label; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
    T.TextField {
        id: input
        Layout.fillWidth: true
        implicitHeight: Math.max(Tone.target, contentHeight + 20)
        padding: 10
        font.family: Tone.words // figures of one width tear "10.3 fl oz" apart at its point
        font.pixelSize: Tone.body
        color: Tone.ink
        selectionColor: Tone.ink
        selectedTextColor: Tone.paper
        selectByMouse: true
        inputMethodHints: root.numeric ? Qt.ImhFormattedNumbersOnly : Qt.ImhNone
        onTextEdited: root.edited(text)
        // what others wrote is read from its beginning
        onTextChanged: if (!activeFocus) cursorPosition = 0
        onAccepted: root.accepted()
        Accessible.role: Accessible.EditableText
        Accessible.name: root.label
        Accessible.description: root.problem !== "" ? root.problem : root.note
        background: Item {
            Rectangle { anchors.fill: parent; color: Tone.paper; border.width: Tone.hair; border.color: Tone.line }
            Rectangle {
                anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
                height: input.activeFocus || root.problem !== "" ? 3 : Tone.stroke
                color: input.activeFocus || root.problem !== "" ? Tone.ink : Tone.quiet
            }
            FocusEdge { around: parent; shown: input.activeFocus }
        }
    }
    BodyText { visible: root.problem !== ""; text: root.problem; level: "small"; font.bold: true; Layout.fillWidth: true }
    BodyText { visible: root.problem === "" && root.note !== ""; text: root.note; level: "small"; quiet: true; Layout.fillWidth: true }
}
