// SPDX-License-Identifier: Apache-2.0
// Whose sheet this is, and the sentence about what was looked at.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property RigModel rig
    /// Only whose sheet it is.
    property bool brief: false
    signal settingsAsked()
    signal whyAsked()
    signal editAsked()

    spacing: 2

    Flow {
        id: top
        spacing: 12
        Layout.fillWidth: true
        BodyText { width: Math.min(implicitWidth, top.width); text: root.rig.name; level: "title" }
        WordButton { text: qsTr("settings", "page"); onClicked: root.settingsAsked() }
    }
    BodyText { text: root.rig.about; level: "small"; quiet: true; Layout.fillWidth: true }
    Once {
        wanted: !root.brief
        RigWords { rig: root.rig; Layout.fillWidth: true; Layout.topMargin: 4; onWhyAsked: root.whyAsked(); onEditAsked: root.editAsked() }
    }
}
