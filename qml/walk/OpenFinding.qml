// SPDX-License-Identifier: Apache-2.0
// What was found here before and is still open, with its photo at hand.
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    /// {id, number, words, grade, gradeText, place, photo, since, kind}
    required property var finding

    readonly property bool pictured: (root.finding.photo ?? "") !== ""

    implicitHeight: Math.max(shape.height, words.height, root.pictured ? photo.height : 0)

    Glyph { id: shape; kind: root.finding.kind ?? "attention"; size: Tone.px(24) }
    BodyText {
        id: words
        x: shape.width + 10
        width: root.width - x - (root.pictured ? photo.width + 10 : 0)
        text: qsTr("Finding %1 since %2: %3", "number, date, what").arg(root.finding.number).arg(root.finding.since)
            .arg(Format.join([root.finding.words, root.finding.gradeText, root.finding.place], ", "))
        level: "small"
    }
    PhotoTile {
        id: photo
        visible: root.pictured
        x: root.width - width
        width: 96
        height: 72
        photo: root.finding.photo ?? ""
        caption: root.finding.words
    }
}
