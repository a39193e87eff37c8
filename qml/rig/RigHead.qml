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
    /// "all"; or "head" and "rest" where the drawing goes between; on a walk "name" is enough.
    property string part: "all"
    readonly property bool headed: root.part !== "rest"
    readonly property bool told: root.part === "all" || root.part === "rest"
    signal settingsAsked()
    signal whyAsked()

    spacing: 2

    GridLayout {
        visible: root.headed
        columns: root.width > Tone.px(320) ? 2 : 1
        rowSpacing: 0
        BodyText { text: root.rig.name; level: "title"; Layout.fillWidth: true }
        WordButton { text: qsTr("settings", "page"); Layout.alignment: Qt.AlignTop; onClicked: root.settingsAsked() }
    }
    BodyText { visible: root.headed; text: root.rig.about; level: "small"; quiet: true; Layout.fillWidth: true }
    Item { visible: root.headed; implicitHeight: 4 }
    BodyText { visible: root.part === "all" || root.part === "head"; text: root.rig.state; Layout.fillWidth: true }
    Item { visible: root.told; implicitHeight: 4 }
    Repeater {
        model: root.told ? root.rig.figures : []
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
        model: !root.told ? [] : Array.from(root.rig.holds).filter(one => (one.accepted ?? "") !== "")
        BodyText { required property var modelData; text: Format.join([modelData.title, modelData.accepted], ": "); level: "small"; font.bold: true; Layout.fillWidth: true }
    }
    BodyText { visible: root.told && root.rig.hiddenPoints.length > 0; text: qsTr("Hidden: %1", "points").arg(Array.from(root.rig.hiddenPoints).join("; ")); level: "small"; font.bold: true; Layout.fillWidth: true }
    WordButton { visible: root.told && (root.rig.figures.length > 0 || root.rig.holds.length > 0); text: qsTr("why", "opens the grounds of the figures"); onClicked: root.whyAsked() }
}
