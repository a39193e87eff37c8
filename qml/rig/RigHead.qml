// SPDX-License-Identifier: Apache-2.0
// Whose sheet this is, and the sentence about what was looked at.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property RigModel rig
    signal settingsAsked()

    spacing: 2

    GridLayout {
        columns: root.width > Tone.px(320) ? 2 : 1
        rowSpacing: 0
        BodyText { text: root.rig.name; level: "title"; Layout.fillWidth: true }
        WordButton { text: qsTr("settings", "page"); Layout.alignment: Qt.AlignTop; onClicked: root.settingsAsked() }
    }
    BodyText { text: root.rig.about; level: "small"; quiet: true; Layout.fillWidth: true }
    Item { implicitHeight: 4 }
    BodyText { text: root.rig.state; Layout.fillWidth: true }
}
