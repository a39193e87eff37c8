// SPDX-License-Identifier: Apache-2.0
// Photos that were taken and have no finding yet.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property CameraModel camera
    /// Addresses that are not offered, since they are chosen already.
    property var chosen: []
    /// Whether a press takes one into the finding.
    property bool picking: false
    signal picked(string file)

    readonly property var offered: Array.from(root.camera.waiting).filter(one => root.chosen.indexOf(one) < 0)

    spacing: 4

    TileRows { id: tileRows; photos: root.offered }
    BodyText {
        text: root.offered.length === 0 ? qsTr("No photo waits for its mark.")
            : root.picking ? qsTr("%n photo(s) wait for a mark; press those of this finding", "", root.offered.length) : qsTr("%n photo(s) wait for a mark", "", root.offered.length)
        level: "small"
        quiet: true
        Layout.fillWidth: true
    }
    Flow {
        id: tiles
        visible: root.offered.length > 0
        spacing: Tone.gap
        Layout.fillWidth: true
        Repeater {
            model: tileRows.rows
            Column {
                id: one
                required property string file
                required property int index
                width: Math.min(tiles.width, Math.max(Tone.px(132), word.implicitWidth))
                PhotoTile {
                    width: 132
                    height: 100
                    photo: one.file
                    caption: qsTr("waiting, number %1", "photo").arg(one.index + 1)
                    opens: root.picking
                    onOpened: file => root.picked(file)
                }
                WordButton { id: word; text: qsTr("put away", "a photo"); level: Tone.small; onClicked: root.camera.putAway(one.file) }
            }
        }
    }
    WordButton { visible: root.camera.away > 0; text: qsTr("bring back %n put away", "photos", root.camera.away); level: Tone.small; onClicked: root.camera.bringBack() }
}
