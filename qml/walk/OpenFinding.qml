// SPDX-License-Identifier: Apache-2.0
// What was found here before and is still open, with its photo at hand.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

RowLayout {
    id: root

    /// {id, number, words, grade, gradeText, place, photo, since, kind}
    required property var finding

    spacing: 10

    Glyph { kind: root.finding.kind ?? "attention"; size: Tone.px(24); Layout.alignment: Qt.AlignTop }
    BodyText {
        text: qsTr("Finding %1 since %2: %3", "number, date, what").arg(root.finding.number).arg(root.finding.since)
            .arg([root.finding.words, root.finding.gradeText, root.finding.place].filter(one => one).join(", "))
        level: "small"
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignTop
    }
    PhotoTile {
        visible: (root.finding.photo ?? "") !== ""
        photo: root.finding.photo ?? ""
        caption: root.finding.words
        Layout.alignment: Qt.AlignTop
        Layout.preferredWidth: 96
        Layout.preferredHeight: 72
    }
}
