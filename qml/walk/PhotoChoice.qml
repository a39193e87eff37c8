// SPDX-License-Identifier: Apache-2.0
// Photos to go with a finding, chosen as files; phones offer their camera in the same choice.
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
    WordButton { text: qsTr("photo from a file"); onClicked: dialog.active = true }
    Instantiator {
        id: dialog
        active: false
        delegate: FileDialog {
            title: qsTr("Photos of the finding")
            fileMode: FileDialog.OpenFiles
            nameFilters: [qsTr("Photos (*.jpg *.jpeg *.png)")]
            Component.onCompleted: open()
            onAccepted: { root.add(selectedFiles); dialog.active = false }
            onRejected: dialog.active = false
        }
    }
}
