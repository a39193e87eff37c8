// SPDX-License-Identifier: Apache-2.0
// The wheels from above, nose up, each with what it read last; a press shows what it read before.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Column {
    id: root

    /// See wheel_map.hpp.
    required property var map
    signal trendAsked(string point)

    property int chosen: 0
    readonly property var wheel: root.map.wheels[root.chosen]
    readonly property real row: Math.max(Tone.target, Tone.px(78))
    readonly property real body: Math.min(Tone.px(120), root.width * 0.28)

    spacing: 6

    BodyText { text: root.map.title; level: "head"; width: root.width }
    BodyText { visible: text !== ""; text: root.map.limits; level: "small"; quiet: true; width: root.width }
    Item {
        id: plan
        readonly property real nose: Tone.px(44)
        width: root.width
        height: nose + root.row * Math.max(1, root.map.axles) + Tone.px(28)

        // body and drawbar
        Rectangle { x: (plan.width - width) / 2; y: plan.nose; width: root.body; height: plan.height - plan.nose; color: Tone.band; border.width: Tone.stroke; border.color: Tone.quiet }
        Rectangle { x: (plan.width - width) / 2; y: 8; width: Tone.stroke + 1; height: plan.nose - 8; color: Tone.quiet }
        Rectangle { x: (plan.width - width) / 2; y: 0; width: Tone.px(12); height: width; radius: width / 2; color: Tone.paper; border.width: Tone.stroke; border.color: Tone.quiet }
        BodyText { x: (plan.width + 24) / 2; y: 0; text: qsTr("front", "of the rig, on a drawing from above"); level: "small"; quiet: true; wrapMode: Text.NoWrap; Accessible.ignored: true }
        Repeater {
            model: root.map.wheels
            Press {
                id: wheel
                required property var modelData
                required property int index
                readonly property bool onLeft: modelData.left
                x: onLeft ? 0 : plan.width - width
                y: plan.nose + Tone.px(10) + modelData.axle * root.row
                width: (plan.width - root.body) / 2 + Tone.px(8)
                height: root.row - 6
                checkable: true
                checked: root.chosen === index
                spoken: modelData.spoken
                onClicked: root.chosen = index
                onToggled: checked = Qt.binding(() => root.chosen === index)
                background: Item {}
                Item {
                    anchors.fill: parent
                    Rectangle {
                        id: tire
                        x: wheel.onLeft ? parent.width - width : 0
                        width: Tone.px(20)
                        height: parent.height - 8
                        y: 4
                        radius: 5
                        color: wheel.checked ? Tone.ink : Tone.paper
                        border.width: Tone.stroke + (wheel.modelData.out ? 2 : 0)
                        border.color: Tone.ink
                        // out of its limits: barred, as well as said
                        Rectangle { visible: wheel.modelData.out; anchors.verticalCenter: parent.verticalCenter; x: -4; width: parent.width + 8; height: Tone.stroke + 2; color: wheel.checked ? Tone.paper : Tone.ink; border.width: Tone.hair; border.color: Tone.ink }
                    }
                    Column {
                        x: wheel.onLeft ? 0 : tire.width + 8
                        width: parent.width - tire.width - 8
                        anchors.verticalCenter: parent.verticalCenter
                        BodyText { width: parent.width; text: wheel.modelData.value === "" ? "–" : wheel.modelData.value; font.bold: true; horizontalAlignment: wheel.onLeft ? Text.AlignRight : Text.AlignLeft; Accessible.ignored: true }
                        BodyText { width: parent.width; text: Format.join([wheel.modelData.told, wheel.modelData.name], ", "); level: "small"; font.bold: wheel.modelData.out; quiet: !wheel.modelData.out; horizontalAlignment: wheel.onLeft ? Text.AlignRight : Text.AlignLeft; Accessible.ignored: true }
                    }
                }
            }
        }
    }
    BodyText { text: root.wheel.history.length > 0 ? root.wheel.name : qsTr("%1: no reading was taken yet", "a wheel").arg(root.wheel.name); font.bold: true; width: root.width }
    Repeater {
        model: root.wheel.history
        LabelRow { required property var modelData; label: modelData.label; value: modelData.value; width: root.width }
    }
    WordButton { visible: root.map.wheels.some(one => one.history.length > 0); text: qsTr("its readings over time"); onClicked: root.trendAsked(root.map.point) }
}
