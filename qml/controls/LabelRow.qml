// SPDX-License-Identifier: Apache-2.0
// A name and what stands against it, side by side or, when words are large, one under the other.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style

GridLayout {
    id: root

    required property string label
    required property string value
    property bool strong: false

    columns: root.width > Tone.px(300) ? 2 : 1
    columnSpacing: 12
    rowSpacing: 0

    BodyText { text: root.label; quiet: true; Layout.fillWidth: true; Layout.preferredWidth: 10 }
    BodyText {
        text: root.value
        font.bold: root.strong
        horizontalAlignment: root.columns === 2 ? Text.AlignRight : Text.AlignLeft
        Layout.fillWidth: true
        Layout.preferredWidth: 10
    }
}
