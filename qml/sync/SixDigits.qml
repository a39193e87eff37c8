// SPDX-License-Identifier: Apache-2.0
// Six digits that two people hold against each other.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    required property string code

    spacing: 2

    BodyText { text: qsTr("Six digits, on both devices"); level: "small"; quiet: true; Layout.fillWidth: true }
    Digits {
        text: root.code
        size: Tone.px(40)
        font.bold: true
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: 24
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        Accessible.name: qsTr("Six digits: %1", "code of a meeting").arg(root.code)
    }
}
