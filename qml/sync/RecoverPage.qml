// SPDX-License-Identifier: Apache-2.0
// Every device is lost, a store and the paper are left: this one becomes an owner again.
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
    readonly property bool owned: root.paper.step === "owner"

    Component.onCompleted: root.paper.clear()

    spacing: 12

    BodyText { text: qsTr("Back by the words on paper"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: !root.owned && root.sync.stores.length === 0; text: qsTr("Add the store first that has the rig, on the page before this one."); font.bold: true; Layout.fillWidth: true }
    Choice {
        id: store
        visible: !root.owned && root.sync.stores.length > 0
        label: qsTr("The store that has the rig")
        answers: Array.from(root.sync.stores, one => ({ slug: one.name, name: one.name }))
        Layout.fillWidth: true
        onPicked: slug => chosen = slug
    }
    WordsField { id: words; visible: !root.owned; label: qsTr("The 24 words"); Layout.fillWidth: true }
    WordsField { id: mark; visible: !root.owned; label: qsTr("The mark, seven words beside them; may stay empty"); input.implicitHeight: Tone.px(64); Layout.fillWidth: true }
    ActButton {
        visible: !root.owned
        text: qsTr("Own the rig again")
        enabled: store.chosen !== "" && words.text !== "" && !root.paper.busy
        filled: true
        Layout.fillWidth: true
        onClicked: root.paper.recover(store.chosen, words.text, mark.text)
    }
    BodyText { visible: root.paper.busy; text: qsTr("Looking at the store …"); quiet: true; Layout.fillWidth: true }
    FaultBlock { fault: root.paper.fault; Layout.fillWidth: true }
    Once {
        wanted: root.owned
        ColumnLayout {
            spacing: 12
            Layout.fillWidth: true
            BodyText { text: qsTr("This device owns the rig again."); level: "head"; Layout.fillWidth: true }
            BodyText { visible: !root.paper.compared; text: qsTr("No mark was typed. Compare it with the paper before you trust what comes:"); font.bold: true; Layout.fillWidth: true }
            PaperWords { visible: !root.paper.compared; title: qsTr("Mark of the rig"); words: root.paper.mark; Layout.fillWidth: true }
            BodyText { text: qsTr("Exchange with the store now: the rig comes from there. Then revoke the devices that were lost."); Layout.fillWidth: true }
            ActButton { text: qsTr("To the stores"); filled: true; Layout.fillWidth: true; onClicked: root.done() }
        }
    }
}
