// SPDX-License-Identifier: Apache-2.0
// How far an exchange is, a way to stop it, and what came of it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property SyncModel sync
    readonly property bool running: root.sync.busyWith !== ""

    visible: root.running || root.sync.stopped || root.sync.outcome.length > 0
    spacing: 6

    BodyText { visible: root.running; text: qsTr("Exchanging with %1", "store").arg(root.sync.busyWith); font.bold: true; Layout.fillWidth: true }
    Rectangle {
        visible: root.running
        implicitHeight: Tone.px(12)
        color: Tone.paper
        border.width: Tone.hair
        border.color: Tone.quiet
        Layout.fillWidth: true
        Accessible.role: Accessible.ProgressBar
        Accessible.name: root.sync.progress
        Rectangle { width: parent.width * root.sync.done; height: parent.height; color: Tone.ink }
    }
    BodyText { visible: root.running; text: root.sync.progress; level: "small"; quiet: true; Layout.fillWidth: true }
    ActButton { visible: root.running; text: qsTr("Stop"); detail: qsTr("what came and went until now stays"); Layout.fillWidth: true; onClicked: root.sync.stop() }
    BodyText { visible: root.sync.stopped; text: qsTr("Stopped. What came and went until then stays; exchange again to go on."); font.bold: true; Layout.fillWidth: true }
    Repeater {
        model: root.sync.outcome
        BodyText { required property string modelData; required property int index; text: modelData; font.bold: index === 0; Layout.fillWidth: true }
    }
}
