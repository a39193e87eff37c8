// SPDX-License-Identifier: Apache-2.0
// One point on two walks: its shape then, its shape now, and the change in words.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    required property string title
    required property string thenMark
    required property string nowMark
    required property string change
    required property string changeText
    required property string detail
    required property var thenPhotos
    required property var nowPhotos
    required property string faster

    readonly property bool shown: (root.thenPhotos?.length ?? 0) + (root.nowPhotos?.length ?? 0) > 0
    readonly property bool strong: root.change === "new" || root.change === "worse" || root.faster !== ""

    implicitHeight: column.implicitHeight + 18
    Accessible.role: Accessible.ListItem
    Accessible.name: Format.join([qsTr("%1: then %2, now %3, %4", "point: state, state, change").arg(root.title).arg(then.words).arg(now.words).arg(root.changeText), root.faster, root.detail], ". ")

    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; leftMargin: Tone.margin; rightMargin: Tone.margin; verticalCenter: parent.verticalCenter }
        spacing: 6
        RowLayout {
            spacing: 8
            Glyph { id: then; kind: root.thenMark; size: Tone.px(24); Layout.alignment: Qt.AlignTop; Accessible.ignored: true }
            BodyText { text: "→"; font.family: Tone.digits; Layout.alignment: Qt.AlignTop; Accessible.ignored: true }
            Glyph { id: now; kind: root.nowMark; size: Tone.px(24); Layout.alignment: Qt.AlignTop; Accessible.ignored: true }
            ColumnLayout {
                spacing: 1
                Layout.leftMargin: 4
                BodyText { text: root.title; font.bold: root.strong; Layout.fillWidth: true; Accessible.ignored: true }
                BodyText { text: root.changeText; level: "small"; font.bold: root.strong; Layout.fillWidth: true; Accessible.ignored: true }
                BodyText { visible: text !== ""; text: root.faster; level: "small"; font.bold: true; Layout.fillWidth: true; Accessible.ignored: true }
                BodyText { visible: text !== ""; text: root.detail; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
            }
        }
        PhotoPair {
            visible: root.shown
            then: root.thenPhotos?.[0] ?? ""
            now: root.nowPhotos?.[0] ?? ""
            what: root.title
            Layout.fillWidth: true
        }
    }
    Rule { width: parent.width; anchors.bottom: parent.bottom }
}
