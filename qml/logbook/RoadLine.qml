// SPDX-License-Identifier: Apache-2.0
// Roughness along a way: a bar a stretch, black where it is rough, two broken lines where classes part.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    /// See road_line.hpp.
    required property var road

    readonly property real side: widest.implicitWidth + 10
    readonly property real lower: widest.implicitHeight + 8
    readonly property real brow: widest.implicitHeight / 2
    readonly property real across: Math.max(1, root.width - root.side - 4)
    readonly property real up: Math.max(1, root.height - root.lower - root.brow)

    function atValue(value: real): real { return root.brow + (1 - value / root.road.most) * root.up }
    function atWay(way: real): real { return root.side + way / root.road.span * root.across }

    implicitHeight: Tone.px(150)
    Accessible.role: Accessible.Graphic
    Accessible.name: root.road.spoken ?? ""

    BodyText { id: widest; visible: false; level: "small"; wrapMode: Text.NoWrap; text: (root.road.ticks ?? []).reduce((most, one) => one.text.length > most.length ? one.text : most, "0") }

    Repeater {
        model: root.road.ticks ?? []
        Item {
            id: tick
            required property var modelData
            readonly property real down: Math.round(root.atValue(modelData.value))
            Rectangle { x: root.side; y: tick.down; width: root.across; height: Tone.hair; color: Tone.line; opacity: 0.7 }
            BodyText { x: root.side - 8 - width; y: tick.down - height / 2; text: tick.modelData.text; level: "small"; quiet: true; wrapMode: Text.NoWrap; Accessible.ignored: true }
        }
    }
    Repeater {
        model: root.road.bars ?? []
        Rectangle {
            required property var modelData
            readonly property bool rough: modelData.value > root.road.edges[1]
            x: root.atWay(modelData.from)
            y: root.atValue(modelData.value)
            width: Math.max(1, root.atWay(modelData.to) - x - (root.across / root.road.bars.length > 5 ? 1 : 0))
            height: Math.max(1, root.brow + root.up - y)
            color: rough ? Tone.ink : Tone.quiet
            opacity: rough ? 1 : 0.6
        }
    }
    Repeater {
        model: root.road.edges ?? []
        Item {
            id: edge
            required property real modelData
            x: root.side
            y: Math.round(root.atValue(modelData))
            width: root.across
            Row {
                spacing: 6
                Repeater {
                    model: Math.max(0, Math.floor(edge.width / 14))
                    Rectangle { width: 8; height: Tone.stroke; color: Tone.ink; border.width: 0 }
                }
            }
        }
    }
    Rectangle { x: root.side; y: root.brow + root.up; width: root.across; height: Tone.stroke; color: Tone.quiet }
    Repeater {
        model: root.road.reach ?? []
        BodyText {
            required property var modelData
            x: Math.max(root.side, Math.min(root.width - width, root.atWay(modelData.at) - width / 2))
            y: root.brow + root.up + 5
            text: modelData.text
            level: "small"
            quiet: true
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
}
