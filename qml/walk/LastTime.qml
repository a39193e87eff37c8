// SPDX-License-Identifier: Apache-2.0
// What this line got last time, with its photo at hand: shown, never copied into the mark.
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    /// {mark, words, photo}; empty on a first look.
    required property var last
    /// Whether the photo is shown here; open findings bring their own.
    property bool pictured: true
    signal photoAsked(string photo)

    readonly property string words: root.last.words ?? ""
    readonly property string photo: root.pictured ? root.last.photo ?? "" : ""

    visible: root.words !== ""
    implicitHeight: root.visible ? Math.max(said.height, tile.visible ? tile.height : 0) : 0

    Glyph { id: shape; kind: root.last.mark ?? "gap"; size: Tone.px(18); y: 2; Accessible.ignored: true }
    BodyText {
        id: said
        x: shape.width + 8
        width: root.width - x - (tile.visible ? tile.width + 10 : 0)
        text: root.words
        level: "small"
        quiet: true
    }
    PhotoTile {
        id: tile
        visible: root.photo !== ""
        x: root.width - width
        width: 80
        height: 60
        photo: root.photo
        caption: qsTr("last time")
        opens: true
        onOpened: photo => root.photoAsked(photo)
    }
}
