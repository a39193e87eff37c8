// SPDX-License-Identifier: Apache-2.0
// A wide act at the thumb: outlined or, when it leads on, filled with ink. May carry a second line.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style

Press {
    id: root

    property string detail: ""
    property bool filled: false
    /// A state's shape before the words; "" for none.
    property string glyph: ""
    property int size: Tone.head

    readonly property color face: root.filled ? Tone.ink : Tone.paper
    readonly property color words: root.filled ? Tone.paper : Tone.ink

    padding: 10
    spoken: root.detail === "" ? root.text : qsTr("%1. %2", "name of a button, what it leads to").arg(root.text).arg(root.detail)

    contentItem: RowLayout {
        spacing: 12
        Item { Layout.fillWidth: true }
        Glyph { visible: root.glyph !== ""; kind: root.glyph; size: Tone.px(28); Layout.alignment: Qt.AlignVCenter }
        ColumnLayout {
            spacing: 2
            BodyText {
                text: root.text
                color: root.words
                font.pixelSize: root.size
                font.bold: true
                horizontalAlignment: Text.AlignHCenter
                Layout.fillWidth: true
                Layout.maximumWidth: root.availableWidth - (root.glyph === "" ? 0 : Tone.px(28) + 12)
                Accessible.ignored: true
            }
            BodyText {
                visible: root.detail !== ""
                text: root.detail
                level: "small"
                color: root.words
                horizontalAlignment: Text.AlignHCenter
                Layout.fillWidth: true
                Layout.maximumWidth: root.availableWidth
                Accessible.ignored: true
            }
        }
        Item { Layout.fillWidth: true }
    }
    background: Rectangle {
        color: root.face
        radius: Tone.corner
        border.width: Tone.stroke
        border.color: Tone.ink
        Rectangle { anchors.fill: parent; radius: Tone.corner; color: Tone.quiet; opacity: root.down ? 0.35 : 0 }
    }
}
