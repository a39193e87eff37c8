// SPDX-License-Identifier: Apache-2.0
// A word that opens the choice of files; the dialog is made only then.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQml.Models
import Snugwalk.Controls

WordButton {
    id: root

    signal chosen(var files)

    text: qsTr("photo from a file")
    onClicked: dialog.active = true

    Instantiator {
        id: dialog
        active: false
        delegate: FileDialog {
            parentWindow: root.Window.window
            title: qsTr("Photos of the finding")
            fileMode: FileDialog.OpenFiles
            nameFilters: [qsTr("Photos (*.jpg *.jpeg *.png)")]
            Component.onCompleted: open()
            onAccepted: { root.chosen(Array.from(selectedFiles, one => String(one))); dialog.active = false }
            onRejected: dialog.active = false
        }
    }
}
