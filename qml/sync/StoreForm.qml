// SPDX-License-Identifier: Apache-2.0
// A new store: a name and a folder, chosen or typed.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import QtQml.Models
import Snugwalk.Controls

ColumnLayout {
    id: root

    signal sent(string name, string folder)
    signal leftOff()

    spacing: 8

    BodyText { text: qsTr("A folder, a stick or a drive that other devices reach too"); font.bold: true; Layout.fillWidth: true }
    Field { id: name; label: qsTr("Name of the store"); note: qsTr("letters, digits and hyphens, such as red-stick"); Layout.fillWidth: true }
    Field { id: folder; label: qsTr("Its folder"); Layout.fillWidth: true }
    Flow {
        spacing: 12
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        WordButton { text: qsTr("choose the folder"); onClicked: pick.active = true }
        WordButton { text: qsTr("leave it", "adds no store"); onClicked: root.leftOff() }
    }
    ActButton {
        text: qsTr("Add the store")
        enabled: name.text.trim() !== "" && folder.text.trim() !== ""
        filled: true
        Layout.fillWidth: true
        onClicked: root.sent(name.text, folder.text)
    }

    // made only when asked for
    Instantiator {
        id: pick
        active: false
        delegate: FolderDialog {
            title: qsTr("Folder of the store")
            Component.onCompleted: open()
            onAccepted: { folder.text = decodeURIComponent(String(selectedFolder).replace(/^file:\/\//, "")); pick.active = false }
            onRejected: pick.active = false
        }
    }
}
