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
    /// Whether the file is to be written; its ending, and an address to begin with.
    property bool saves: false
    property string ending: ""
    property string suggested: ""
    signal chosen(string file)

    function ask() { root.active = true }

    active: false
    delegate: FileDialog {
        title: root.title
        fileMode: root.saves ? FileDialog.SaveFile : FileDialog.OpenFile
        defaultSuffix: root.ending
        nameFilters: root.filters
        Component.onCompleted: { if (root.suggested !== "") selectedFile = root.suggested; open() }
        onAccepted: { root.chosen(String(selectedFile)); root.active = false }
        onRejected: root.active = false
    }
}
