// SPDX-License-Identifier: Apache-2.0
// A code as words to type or copy, numbered by fives.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    required property string words

    spacing: 4

    BodyText { text: qsTr("The same as words"); level: "small"; quiet: true; Layout.fillWidth: true }
    TextEdit {
        id: edit
        text: root.words
        readOnly: true
        activeFocusOnTab: true
        wrapMode: TextEdit.Wrap
        color: Tone.ink
        selectionColor: Tone.ink
        selectedTextColor: Tone.paper
        font.family: Tone.digits
        font.pixelSize: Tone.px(14)
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        Accessible.role: Accessible.StaticText
        Accessible.name: root.words
        FocusEdge { around: edit }
    }
    WordButton {
        text: qsTr("copy the words")
        onClicked: { edit.selectAll(); edit.copy(); edit.deselect() }
    }
}
