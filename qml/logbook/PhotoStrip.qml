// SPDX-License-Identifier: Apache-2.0
// Photos of the logbook, newest first, as many across as there is room for.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

GridView {
    id: root

    signal photoAsked(string photo)

    readonly property int across: Math.max(2, Math.floor(root.width / Tone.px(170)))

    cellWidth: Math.floor(root.width / root.across)
    cellHeight: cellWidth * 0.75 + Tone.px(48)
    clip: true
    interactive: !Tone.gloves
    delegate: Item {
        id: cell
        /// {hash, date, title, caption}
        required property var modelData
        readonly property string words: Format.join([cell.modelData.date, cell.modelData.caption || cell.modelData.title], ", ")
        width: root.cellWidth
        height: root.cellHeight
        PhotoTile {
            id: tile
            x: 4
            width: parent.width - 8
            height: width * 0.75
            photo: cell.modelData.hash
            caption: cell.words
            opens: true
            onOpened: photo => root.photoAsked(photo)
        }
        BodyText {
            anchors { left: tile.left; right: tile.right; top: tile.bottom; topMargin: 2 }
            text: cell.words
            level: "small"
            quiet: true
            maximumLineCount: 2
            elide: Text.ElideRight
        }
    }
}
