// SPDX-License-Identifier: Apache-2.0
// One thing that two people wrote differently: every version with who and when, to choose one.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {key, title, versions: [{text, who, when, device, shown}]}
    required property var conflict
    property bool able: true
    signal chosen(int index)

    spacing: 8

    Rule { Layout.fillWidth: true; Layout.bottomMargin: 4 }
    BodyText { text: root.conflict.title; font.bold: true; Layout.fillWidth: true }
    GridLayout {
        columns: width >= Tone.px(520) ? 2 : 1
        columnSpacing: Tone.gap
        rowSpacing: Tone.gap
        Layout.fillWidth: true
        Repeater {
            model: root.conflict.versions
            Rectangle {
                id: version
                required property var modelData
                required property int index
                readonly property string said: Format.join([modelData.who, modelData.device, modelData.when], ", ")
                implicitHeight: box.implicitHeight + 20
                color: Tone.paper
                border.width: Tone.hair
                border.color: Tone.quiet
                radius: Tone.corner
                Layout.fillWidth: true
                Layout.preferredWidth: 10
                Layout.alignment: Qt.AlignTop
                ColumnLayout {
                    id: box
                    anchors { left: parent.left; right: parent.right; top: parent.top; margins: 10 }
                    spacing: 2
                    BodyText { text: version.modelData.text; level: "head"; Layout.fillWidth: true }
                    BodyText { text: version.said; level: "small"; quiet: true; Layout.fillWidth: true }
                    BodyText { visible: version.modelData.shown; text: qsTr("shown until someone chooses"); level: "small"; Layout.fillWidth: true }
                    ActButton {
                        text: qsTr("Take this one")
                        spoken: qsTr("Take this one: %1, %2", "value, who wrote it").arg(version.modelData.text).arg(version.said)
                        size: Tone.body
                        enabled: root.able
                        Layout.fillWidth: true
                        Layout.topMargin: 4
                        onClicked: root.chosen(version.index)
                    }
                }
            }
        }
    }
}
