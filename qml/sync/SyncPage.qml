// SPDX-License-Identifier: Apache-2.0
// Exchanging with other devices: what waits, the stores, the devices of the rig.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property SyncModel sync
    required property bool hasRig
    signal shareAsked()
    signal joinAsked()
    signal conflictsAsked()
    signal paperAsked()

    property bool adding: false
    readonly property int open: root.sync.conflicts.conflicts.length + root.sync.conflicts.aside.length
    readonly property bool able: root.sync.busyWith === ""

    Connections {
        target: root.sync
        function onStoreAdded() { root.adding = false }
    }

    spacing: 10

    BodyText { text: qsTr("Exchange", "with other devices"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: text !== ""; text: root.sync.standing; Layout.fillWidth: true }
    Repeater {
        model: root.sync.waiting
        BodyText { required property string modelData; text: modelData; font.bold: true; Layout.fillWidth: true }
    }
    BodyText { visible: root.sync.shared && root.sync.waiting.length === 0; text: qsTr("Nothing waits."); quiet: true; Layout.fillWidth: true }
    ActButton {
        visible: root.open > 0
        text: qsTr("Look at what differs")
        detail: qsTr("both versions are kept until a person chooses")
        Layout.fillWidth: true
        onClicked: root.conflictsAsked()
    }
    WordButton { visible: root.sync.elsewhere.length > 0 && root.sync.asked === ""; text: qsTr("ask for the photos in full"); spoken: qsTr("ask for the originals of photos that are on other devices"); enabled: root.able; Layout.fillWidth: true; onClicked: root.sync.ask("") }
    BodyText { visible: text !== ""; text: root.sync.asked; Layout.fillWidth: true }
    ExchangeBlock { sync: root.sync; Layout.fillWidth: true }
    FaultBlock { fault: root.sync.fault; Layout.fillWidth: true }

    BodyText { text: qsTr("Stores"); level: "head"; Layout.fillWidth: true; Layout.topMargin: 8 }
    BodyText { visible: root.sync.stores.length === 0; text: qsTr("No store yet. A store is a place where devices leave what is new for each other: a stick, a shared folder, a drive."); quiet: true; Layout.fillWidth: true }
    Repeater {
        model: root.sync.stores
        StoreRow {
            required property var modelData
            store: modelData
            able: root.able
            Layout.fillWidth: true
            onExchangeAsked: root.sync.exchangeNow(modelData.name, photos.chosen === "all")
            onRemoveAsked: root.sync.remove(modelData.name)
        }
    }
    Choice {
        id: photos
        visible: root.sync.shared && root.sync.stores.length > 0
        label: qsTr("Photos in full, when exchanging")
        answers: [{ slug: "wanted", name: qsTr("those asked for", "photos") }, { slug: "all", name: qsTr("all of them: on Wi-Fi", "photos") }]
        chosen: "wanted"
        Layout.fillWidth: true
        onPicked: slug => chosen = slug
    }
    BodyText { visible: photos.visible; text: qsTr("Entries and small pictures of photos always come."); level: "small"; quiet: true; Layout.fillWidth: true }
    WordButton { visible: !root.adding; text: qsTr("add a store"); onClicked: root.adding = true }
    Once {
        wanted: root.adding
        StoreForm { Layout.fillWidth: true; onSent: store => root.sync.add(store); onLeftOff: root.adding = false }
    }

    BodyText { visible: root.sync.devices.length > 0; text: qsTr("Devices of this rig"); level: "head"; Layout.fillWidth: true; Layout.topMargin: 8 }
    Repeater {
        model: root.sync.devices
        DeviceRow {
            required property var modelData
            device: modelData
            Layout.fillWidth: true
            onRevoked: reason => root.sync.revoke(modelData.id, reason)
        }
    }
    ActButton {
        visible: root.hasRig && (!root.sync.shared || root.sync.owner)
        text: root.sync.shared ? qsTr("Share with one more device") : qsTr("Share this rig")
        size: Tone.body
        Layout.fillWidth: true
        Layout.topMargin: 8
        onClicked: root.shareAsked()
    }
    WordButton { visible: root.hasRig && root.sync.shared && root.sync.owner; text: qsTr("make a key on paper"); Layout.fillWidth: true; onClicked: root.paperAsked() }
    WordButton { text: qsTr("take part in a rig of another device"); Layout.fillWidth: true; onClicked: root.joinAsked() }
    BodyText { text: qsTr("What goes into a store is sealed: who finds a stick reads nothing of it. The logbook on this device is not locked beyond what the device itself does."); level: "small"; quiet: true; Layout.fillWidth: true }
}
