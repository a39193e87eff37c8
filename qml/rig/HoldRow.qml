// SPDX-License-Identifier: Apache-2.0
// One ground for a hold: what it forbids and why. Only a look that failed can be accepted, by its owner.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {title, why, forbids, findingId, point, acceptable, accepted}
    required property var hold
    signal opened(string findingId)
    signal acceptAsked(string point)

    spacing: 2

    Rule { Layout.fillWidth: true }
    RowLayout {
        spacing: 10
        Layout.topMargin: 4
        Glyph { kind: root.hold.findingId === "" && root.hold.acceptable ? "could_not_look" : "hold"; size: Tone.px(26); Layout.alignment: Qt.AlignTop }
        ColumnLayout {
            spacing: 1
            BodyText { text: root.hold.title; font.bold: true; Layout.fillWidth: true }
            BodyText { text: root.hold.forbids; Layout.fillWidth: true }
            BodyText { visible: text !== ""; text: root.hold.why; level: "small"; quiet: true; Layout.fillWidth: true }
            BodyText { visible: text !== ""; text: root.hold.accepted ?? ""; font.bold: true; Layout.fillWidth: true }
        }
    }
    WordButton { visible: root.hold.findingId !== ""; text: qsTr("the finding"); onClicked: root.opened(root.hold.findingId) }
    ActButton { size: Tone.body; Layout.fillWidth: true; visible: root.hold.acceptable === true && (root.hold.accepted ?? "") === ""; text: qsTr("move it once on one's own decision …"); onClicked: root.acceptAsked(root.hold.point) }
}
