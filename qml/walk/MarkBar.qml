// SPDX-License-Identifier: Apache-2.0
// Pass and attention, side by side at the thumb, in the largest words that stay whole.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

RowLayout {
    id: root

    signal passed()
    signal attentionAsked()

    /// The longer of the two, in Spanish too, takes about 5 times its size.
    readonly property int size: Math.min(Tone.px(24), (root.width / 2 - 36) / 5)

    spacing: 12

    ActButton {
        objectName: "pass"
        text: qsTr("Pass", "mark")
        glyph: "pass"
        size: root.size
        implicitHeight: Tone.markHeight
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        onClicked: root.passed()
    }
    ActButton {
        objectName: "attention"
        text: qsTr("Attention", "mark")
        filled: true
        size: root.size
        implicitHeight: Tone.markHeight
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        onClicked: root.attentionAsked()
    }
}
