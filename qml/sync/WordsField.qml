// SPDX-License-Identifier: Apache-2.0
// A place for many words, typed or pasted.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    required property string label
    property alias text: input.text
    property alias input: input

    spacing: 2

    BodyText { text: root.label; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
    T.TextArea {
        id: input
        implicitHeight: Math.max(Tone.px(110), contentHeight + 20)
        padding: 10
        font.family: Tone.digits
        font.pixelSize: Tone.small
        color: Tone.ink
        selectionColor: Tone.ink
        selectedTextColor: Tone.paper
        wrapMode: TextEdit.Wrap
        textFormat: TextEdit.PlainText
        selectByMouse: true
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase | Qt.ImhSensitiveData
        KeyNavigation.priority: KeyNavigation.BeforeItem
        KeyNavigation.tab: nextItemInFocusChain(true)
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        Accessible.role: Accessible.EditableText
        Accessible.multiLine: true
        Accessible.name: root.label
        background: Item {
            Rectangle { anchors.fill: parent; color: Tone.paper; border.width: Tone.hair; border.color: Tone.line }
            Rectangle {
                anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
                height: input.activeFocus ? 3 : Tone.stroke
                color: input.activeFocus ? Tone.ink : Tone.quiet
            }
            FocusEdge { around: parent; shown: input.activeFocus }
        }
    }
}
