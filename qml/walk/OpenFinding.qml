// SPDX-License-Identifier: Apache-2.0
// What was found here before and is still open or waits for its confirming pass, with its photo at hand.
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    /// {id, number, words, grade, gradeText, place, photo, since, kind, status, mended}
    required property var finding
    /// Whether a press on its photo opens it.
    property bool opens: false
    signal photoAsked(string photo)

    readonly property bool pictured: (root.finding.photo ?? "") !== ""
    readonly property bool mended: root.finding.status === "mended"
    readonly property string what: Format.join([root.finding.words, root.finding.gradeText, root.finding.place], ", ")

    implicitHeight: Math.max(shape.height, words.height + (ask.visible ? ask.height : 0), root.pictured ? photo.height : 0)

    Glyph { id: shape; kind: root.finding.kind ?? "attention"; size: Tone.px(24) }
    BodyText {
        id: words
        x: shape.width + 10
        width: root.width - x - (root.pictured ? photo.width + 10 : 0)
        text: root.mended ? qsTr("Finding %1, mended %2: %3", "number, date, what").arg(root.finding.number).arg(root.finding.mended).arg(root.what)
            : qsTr("Finding %1 since %2: %3", "number, date, what").arg(root.finding.number).arg(root.finding.since).arg(root.what)
        level: "small"
    }
    BodyText {
        id: ask
        visible: root.mended
        x: words.x
        y: words.height
        width: words.width
        text: qsTr("A pass here confirms the mend.")
        level: "small"
        font.bold: true
    }
    PhotoTile {
        id: photo
        visible: root.pictured
        x: root.width - width
        width: 96
        height: 72
        photo: root.finding.photo ?? ""
        caption: root.finding.words
        opens: root.opens
        onOpened: photo => root.photoAsked(photo)
    }
}
