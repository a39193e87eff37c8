// SPDX-License-Identifier: Apache-2.0
// A key on paper: shown once, to be written down, for the day every device is lost.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property SyncModel sync
    signal done()

    readonly property PaperModel paper: root.sync.paper
    readonly property bool fresh: root.paper.step === ""

    Component.onCompleted: root.paper.clear()
    Component.onDestruction: root.paper.clear()

    spacing: 12

    BodyText { text: qsTr("A key on paper"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: root.fresh; text: qsTr("24 words that own %1 when every device is lost. They are shown once and kept nowhere: write them down, on two papers if you can.", "rig").arg(root.paper.rigName); Layout.fillWidth: true }
    BodyText { visible: root.fresh; text: qsTr("Who has the words and reaches a store owns the logbook. Keep them as you keep the papers of the rig. A paper that was lost or seen is revoked like a device."); Layout.fillWidth: true }
    ActButton { visible: root.fresh; text: qsTr("Show the words"); detail: qsTr("only you look at the screen now"); enabled: !root.paper.busy; filled: true; Layout.fillWidth: true; onClicked: root.paper.make() }
    Once {
        wanted: root.paper.step === "written"
        ColumnLayout {
            spacing: 12
            Layout.fillWidth: true
            PaperWords { title: qsTr("The key of %1", "rig").arg(root.paper.rigName); words: root.paper.words; strong: true; Layout.fillWidth: true }
            PaperWords { title: qsTr("The mark of the rig; not secret, it tells this rig from one that somebody made up"); words: root.paper.mark; Layout.fillWidth: true }
            BodyText { text: qsTr("Exchange with a store now, so that the store knows this key."); Layout.fillWidth: true }
            ActButton { text: qsTr("It is written down"); detail: qsTr("the words are not shown again"); filled: true; Layout.fillWidth: true; onClicked: root.done() }
        }
    }
    FaultBlock { fault: root.paper.fault; Layout.fillWidth: true }
}
