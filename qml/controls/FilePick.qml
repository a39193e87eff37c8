// SPDX-License-Identifier: Apache-2.0
// The choice of one file, to read or to write anew; the dialog is made only when asked for.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Window
import QtQml.Models

Instantiator {
    id: root

    /// What asks: where the system has no dialog of its own, it comes up in this item's window.
    required property Item over
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
        parentWindow: root.over.Window.window
        fileMode: root.saves ? FileDialog.SaveFile : FileDialog.OpenFile
        defaultSuffix: root.ending
        nameFilters: root.filters
        Component.onCompleted: { if (root.suggested !== "") selectedFile = root.suggested; open() }
        onAccepted: { root.chosen(String(selectedFile)); root.active = false }
        onRejected: root.active = false
    }
}
