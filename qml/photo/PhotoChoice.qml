// SPDX-License-Identifier: Apache-2.0
// Photos to go with a finding: from the camera where there is one, from files, from those that wait.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property CameraModel camera
    /// Addresses of files, in their order.
    property var photos: []
    signal cameraAsked()
    signal drawAsked(string file)

    function add(files: var) {
        root.photos = root.photos.concat(files.map(one => String(one)).filter(one => root.photos.indexOf(one) < 0));
    }

    spacing: 4

    TileRows { id: tileRows; photos: root.photos }
    BodyText { text: root.photos.length === 0 ? qsTr("Photos: none yet") : qsTr("%n photo(s); press one to draw on it", "", root.photos.length); level: "small"; quiet: true; Layout.fillWidth: true }
    Flow {
        id: tiles
        visible: root.photos.length > 0
        spacing: Tone.gap
        Layout.fillWidth: true
        Repeater {
            model: tileRows.rows
            Column {
                id: tile
                required property string file
                required property int index
                width: Math.min(tiles.width, Math.max(Tone.px(132), word.implicitWidth))
                PhotoTile { width: 132; height: 100; photo: tile.file; caption: qsTr("number %1", "photo").arg(tile.index + 1); opens: true; onOpened: file => root.drawAsked(file) }
                WordButton { id: word; text: qsTr("leave out", "a photo"); level: Tone.small; onClicked: root.photos = root.photos.filter((_, at) => at !== tile.index) }
            }
        }
    }
    Flow {
        spacing: 10
        Layout.fillWidth: true
        WordButton { visible: root.camera.there; text: qsTr("take a photo"); onClicked: root.cameraAsked() }
        FileWord { onChosen: files => root.add(files) }
    }
    WaitingPhotos {
        visible: offered.length > 0 || camera.away > 0
        camera: root.camera
        chosen: root.photos
        picking: true
        Layout.fillWidth: true
        onPicked: file => root.add([file])
    }
}
