// SPDX-License-Identifier: Apache-2.0
// One kind of rig to choose, as its own outline drawn from the measures such rigs usually have.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import "geometry.js" as Geometry

Press {
    id: root

    /// As RigView draws it.
    required property var rig
    property bool chosen: false

    readonly property var extent: Geometry.extent("left", root.rig)
    readonly property real drawn: Math.min((root.width - 24) / root.extent.across, Tone.px(58) / root.extent.up)

    checkable: false
    padding: 8
    Accessible.role: Accessible.RadioButton
    Accessible.checked: root.chosen

    contentItem: ColumnLayout {
        spacing: 2
        Item {
            Layout.fillWidth: true
            Layout.preferredHeight: Tone.px(62)
            Rectangle { anchors.fill: parent; color: Tone.paper; visible: root.chosen; radius: Tone.corner }
            RigOutline {
                anchors.fill: parent
                rig: root.rig
                face: "left"
                noseLeft: true
                box: ({ scale: root.drawn, x: (width - root.extent.across * root.drawn) / 2, y: height - 4 - root.extent.up * root.drawn })
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
