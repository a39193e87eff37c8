// SPDX-License-Identifier: Apache-2.0
// How the rig stands, every figure with its grounds: three figures, the holds, what is hidden.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property RigModel rig
    signal opened(string findingId)
    signal acceptAsked(string point)

    spacing: 6

    BodyText { text: qsTr("How it stands, and why"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { text: root.rig.state; Layout.fillWidth: true }
    Repeater {
        model: root.rig.figures
        ColumnLayout {
            id: figure
            required property var modelData
            spacing: 2
            Layout.fillWidth: true
            Layout.topMargin: Tone.gap
            Rule { Layout.fillWidth: true }
            BodyText { text: figure.modelData.title; level: "small"; quiet: true; Layout.fillWidth: true; Layout.topMargin: 4 }
            BodyText { text: figure.modelData.text; level: "head"; Layout.fillWidth: true }
            Repeater {
                model: figure.modelData.why
                BodyText { required property string modelData; text: modelData; level: "small"; quiet: true; Layout.fillWidth: true }
            }
        }
    }
    Repeater {
        model: root.rig.holds
        HoldRow {
            required property var modelData
            hold: modelData
            Layout.fillWidth: true
            Layout.topMargin: Tone.gap
            onOpened: id => root.opened(id)
            onAcceptAsked: point => root.acceptAsked(point)
        }
    }
    ColumnLayout {
        visible: root.rig.hiddenPoints.length > 0
        spacing: 2
        Layout.fillWidth: true
        Layout.topMargin: Tone.gap
        Rule { Layout.fillWidth: true }
        BodyText { text: qsTr("Hidden, though the road or fire hangs on it"); level: "small"; quiet: true; Layout.fillWidth: true; Layout.topMargin: 4 }
        Repeater {
            model: root.rig.hiddenPoints
            BodyText { required property string modelData; text: modelData; Layout.fillWidth: true }
        }
    }
}
