// SPDX-License-Identifier: Apache-2.0
// A name and its figure.
import QtQuick
import Snugwalk.Style

Pair {
    id: root

    required property string label
    required property string value
    property bool strong: false

    text: root.label
    against: root.value
    first.quiet: !root.strong
    second.font.pixelSize: Tone.body
    second.font.bold: root.strong
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1: %2", "name, figure").arg(root.label).arg(root.value)
}
