// SPDX-License-Identifier: Apache-2.0
// Photos to go with a finding: from a file, or from the camera where there is one.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Dialogs
import QtQml.Models
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    property var photos: []
    property bool camera: false
    signal cameraAsked()

    function add(files: var) {
        root.photos = root.photos.concat(files.map(one => String(one)));
    }

    spacing: 4

    BodyText { text: root.photos.length === 0 ? qsTr("Photos: none yet") : qsTr("%n photo(s)", "", root.photos.length); level: "small"; quiet: true; Layout.fillWidth: true }
    Flow {
        spacing: Tone.gap
        Layout.fillWidth: true
        Repeater {
            model: root.photos
            PhotoTile {
                id: tile
                required property string modelData
                required property int index
                width: 132
                height: 100
                photo: modelData
                WordButton {
                    text: qsTr("leave out", "a photo")
                    level: Tone.small
                    anchors { right: parent.right; bottom: parent.bottom }
                    onClicked: root.photos = root.photos.filter((_, at) => at !== tile.index)
                }
            }
        }
    }
    Flow {
        spacing: Tone.gap
        Layout.fillWidth: true
        WordButton { text: qsTr("photo from a file"); onClicked: dialog.active = true }
        WordButton { visible: root.camera; text: qsTr("photo from the camera"); onClicked: root.cameraAsked() }
    }
    Instantiator {
        id: dialog
        active: false
        delegate: FileDialog {
            title: qsTr("Photos of the finding")
            fileMode: FileDialog.OpenFiles
            nameFilters: [qsTr("Photos (*.jpg *.jpeg *.png *.heic)")]
            Component.onCompleted: open()
            onAccepted: { root.add(selectedFiles); dialog.active = false }
            onRejected: dialog.active = false
        }
    }
}
