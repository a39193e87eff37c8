// SPDX-License-Identifier: Apache-2.0
// One kind of rig to choose, as its own outline drawn from the measures such rigs usually have.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Sheet

Press {
    id: root

    /// As RigView draws it.
    required property var rig
    property bool chosen: false

    readonly property real drawn: Math.min((root.width - 20) / sheet.across, Tone.px(60) / sheet.up)

    checkable: false
    padding: 8
    Accessible.role: Accessible.RadioButton
    Accessible.checked: root.chosen

    contentItem: ColumnLayout { // qmllint disable
        spacing: 2
        Item {
            Layout.fillWidth: true
            Layout.preferredHeight: Tone.px(62)
            Rectangle { anchors.fill: parent; color: Tone.paper; visible: root.chosen; radius: Tone.corner }
            RigSheet { id: sheet; rig: root.rig; face: "left" }
            RigOutline {
                anchors.fill: parent
                sheet: sheet
                box: ({ scale: root.drawn, x: (width - sheet.across * root.drawn) / 2, y: height - sheet.up * root.drawn })
            }
        }
        BodyText {
            text: root.text
            color: root.chosen ? Tone.paper : Tone.ink
            font.bold: root.chosen
            horizontalAlignment: Text.AlignHCenter
            Layout.fillWidth: true
            Accessible.ignored: true
        }
    }
    background: Rectangle {
        color: root.chosen ? Tone.ink : Tone.paper
        radius: Tone.corner
        border.width: root.chosen ? Tone.stroke : Tone.hair
        border.color: root.chosen ? Tone.ink : Tone.quiet
    }
}
