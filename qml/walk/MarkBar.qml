// SPDX-License-Identifier: Apache-2.0
// Pass and attention, side by side at the thumb; one under the other when words are large.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

GridLayout {
    id: root

    signal passed()
    signal attentionAsked()

    columns: root.width < Tone.px(330) ? 1 : 2
    columnSpacing: 12
    rowSpacing: Tone.gap

    ActButton {
        objectName: "pass"
        text: qsTr("Pass", "mark")
        glyph: "pass"
        size: Tone.px(24)
        implicitHeight: Tone.markHeight
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        onClicked: root.passed()
    }
    ActButton {
        objectName: "attention"
        text: qsTr("Attention", "mark")
        filled: true
        size: Tone.px(24)
        implicitHeight: Tone.markHeight
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        onClicked: root.attentionAsked()
    }
}
