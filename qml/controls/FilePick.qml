// SPDX-License-Identifier: Apache-2.0
// The choice of one file, to read or to write anew; the dialog is made only when asked for.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQml.Models

Instantiator {
    id: root

    required property string title
    required property var filters
    property bool saving: false
    signal chosen(string file)

    function ask() { root.active = true }

    active: false
    delegate: FileDialog {
        title: root.title
        fileMode: root.saving ? FileDialog.SaveFile : FileDialog.OpenFile
        nameFilters: root.filters
        Component.onCompleted: open()
        onAccepted: { root.chosen(String(selectedFile)); root.active = false }
        onRejected: root.active = false
    }
}
