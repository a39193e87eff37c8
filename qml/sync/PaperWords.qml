// SPDX-License-Identifier: Apache-2.0
// Words to be written down by hand: large, numbered, not to be copied by a slip.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    required property string title
    required property string words
    property bool strong: false

    spacing: 4

    BodyText { text: root.title; level: "small"; quiet: true; Layout.fillWidth: true }
    Text {
        text: root.words
        textFormat: Text.PlainText
        wrapMode: Text.Wrap
        color: Tone.ink
        font.family: Tone.digits
        font.pixelSize: Tone.px(14) // five words and their number fit 360 wide
        font.bold: root.strong
        lineHeight: 1.25
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        Accessible.role: Accessible.StaticText
        Accessible.name: root.words
    }
}
