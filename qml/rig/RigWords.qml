// SPDX-License-Identifier: Apache-2.0
// The sentence about what was looked at, the figures, and what leads to their grounds.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property RigModel rig
    signal whyAsked()
    signal editAsked()

    spacing: 2

    BodyText { text: root.rig.state; Layout.fillWidth: true }
    Item { implicitHeight: 4 }
    Repeater {
        model: root.rig.figures
        Pair {
            required property var modelData
            text: modelData.title
            against: modelData.brief
            first.level: "small"
            first.quiet: true
            second.font.bold: true
            Layout.fillWidth: true
            Accessible.role: Accessible.StaticText
            Accessible.name: qsTr("%1: %2", "name, figure").arg(modelData.title).arg(modelData.text)
        }
    }
    Repeater {
        model: Array.from(root.rig.holds).filter(one => (one.accepted ?? "") !== "")
        BodyText { required property var modelData; text: Format.join([modelData.title, modelData.accepted], ": "); level: "small"; font.bold: true; Layout.fillWidth: true }
    }
    BodyText { visible: root.rig.hiddenPoints.length > 0; text: qsTr("Hidden: %1", "points").arg(Array.from(root.rig.hiddenPoints).join("; ")); level: "small"; font.bold: true; Layout.fillWidth: true }
    Flow {
        id: ways
        spacing: 16
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        WordButton { visible: root.rig.figures.length > 0 || root.rig.holds.length > 0; text: qsTr("why", "opens the grounds of the figures"); onClicked: root.whyAsked() }
        WordButton { width: Math.min(implicitWidth, ways.width); text: qsTr("its measures and plates"); onClicked: root.editAsked() }
    }
}
