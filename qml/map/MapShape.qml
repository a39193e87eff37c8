// SPDX-License-Identifier: Apache-2.0
// A shape on the map: a finding's is that of its call; ring: mended or gone; two rings: a stay; dot: a trip's end.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    /// "hold", "mend", "watch", "open", "past", "stay" or "end".
    required property string shape
    property real size: Tone.px(24)

    readonly property bool called: /^(hold|mend|watch|open)$/.test(root.shape)

    implicitWidth: root.size
    implicitHeight: root.size

    Once {
        wanted: root.called
        Glyph { kind: root.shape === "open" ? "attention" : root.shape; size: root.size; Accessible.ignored: true }
    }
    Once {
        wanted: !root.called
        Item {
            anchors.fill: root
            Rectangle {
                visible: root.shape === "stay"
                anchors.centerIn: parent
                width: Math.round(root.size * 0.84)
                height: width
                radius: width / 2
                color: Tone.paper
                border.width: Tone.stroke
                border.color: Tone.ink
            }
            Rectangle {
                anchors.centerIn: parent
                width: Math.round(root.size * (root.shape === "past" ? 0.56 : 0.42))
                height: width
                radius: width / 2
                color: root.shape === "end" ? Tone.ink : Tone.paper
                border.width: Tone.stroke
                border.color: Tone.ink
            }
        }
    }
}
