// SPDX-License-Identifier: Apache-2.0
// A new store: what it is, a name, and its folder, file or address.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import QtQml.Models
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {name, kind, place, user, password, authority}
    signal sent(var store)
    signal leftOff()

    readonly property bool web: kind.chosen === "webdav"
    readonly property var labels: ({ folder: qsTr("Its folder"), file: qsTr("The file, with its folder"), webdav: qsTr("Address, https://…") })

    function path(place: url): string { return decodeURIComponent(String(place).replace(/^file:\/\//, "")) }
    /// A file to hand over may not be there yet: its folder is chosen, and it is named after the store.
    function take(place: url) {
        const path = root.path(place);
        where.text = kind.chosen === "file" ? path + "/" + (name.text.trim() || "rig") + ".snug" : path;
    }

    spacing: 8

    Choice {
        id: kind
        label: qsTr("What devices meet at")
        answers: [{ slug: "folder", name: qsTr("a folder, stick or drive") }, { slug: "file", name: qsTr("a file to hand over") }, { slug: "webdav", name: qsTr("a WebDAV address") }]
        chosen: "folder"
        Layout.fillWidth: true
        onPicked: slug => chosen = slug
    }
    Field { id: name; label: qsTr("Name of the store"); note: qsTr("letters, digits and hyphens, such as red-stick"); Layout.fillWidth: true }
    Field { id: where; label: root.labels[kind.chosen] ?? ""; Layout.fillWidth: true }
    WordButton { visible: !root.web; text: qsTr("choose the folder"); onClicked: folder.active = true }
    Field { id: user; visible: root.web; label: qsTr("User, if it asks for one"); inputMethodHints: Qt.ImhNoAutoUppercase | Qt.ImhNoPredictiveText; Layout.fillWidth: true }
    Field { id: password; visible: root.web; label: qsTr("Password"); note: qsTr("Kept on this device, for this user of it alone; not locked."); input.echoMode: TextInput.Password; inputMethodHints: Qt.ImhSensitiveData; Layout.fillWidth: true }
    Field { id: authority; visible: root.web; label: qsTr("Certificate file of its authority; may stay empty"); note: qsTr("Only for a server of your own whose certificate this device does not know. Then no other authority is believed for it."); Layout.fillWidth: true }
    WordButton { visible: root.web; text: qsTr("choose the certificate file"); Layout.fillWidth: true; onClicked: certificate.active = true }
    ActButton {
        text: qsTr("Add the store")
        enabled: name.text.trim() !== "" && where.text.trim() !== ""
        filled: true
        Layout.fillWidth: true
        onClicked: root.sent({ name: name.text, kind: kind.chosen, place: where.text, user: root.web ? user.text : "", password: root.web ? password.text : "", authority: root.web ? authority.text : "" })
    }
    WordButton { text: qsTr("leave it", "adds no store"); onClicked: root.leftOff() }

    // made only when asked for
    Instantiator {
        id: folder
        active: false
        delegate: FolderDialog {
            parentWindow: root.Window.window
            title: qsTr("Folder of the store")
            Component.onCompleted: open()
            onAccepted: { root.take(selectedFolder); folder.active = false }
            onRejected: folder.active = false
        }
    }
    Instantiator {
        id: certificate
        active: false
        delegate: FileDialog {
            parentWindow: root.Window.window
            title: qsTr("Certificate of the authority")
            nameFilters: [qsTr("Certificates (*.pem *.crt)")]
            Component.onCompleted: open()
            onAccepted: { authority.text = root.path(selectedFile); certificate.active = false }
            onRejected: certificate.active = false
        }
    }
}
