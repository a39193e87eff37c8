// SPDX-License-Identifier: Apache-2.0
// The year as it goes round: months along the top, and where the rig will stand.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    /// {label, day}
    required property var months
    /// {name, fromDay, toDay, covered}
    required property var stays
    required property real firstDay
    required property real lastDay

    readonly property real inset: Tone.px(14) / 2
    readonly property real month: root.months.length ? (root.width - 2 * root.inset) / root.months.length : 1
    /// Every how many months a name has room.
    readonly property int step: Math.max(1, Math.ceil(Tone.px(46) / root.month))

    function at(day: real): real {
        const part = (day - root.firstDay) / (root.lastDay - root.firstDay);
        return root.inset + Math.max(0, Math.min(1, part)) * (root.width - 2 * root.inset);
    }

    implicitHeight: names.height + (root.stays.length ? strip.height + 4 : 0) + 2
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("the year, and where the rig will be: %1").arg(root.stays.map(one => one.name).join(", "))

    Item {
        id: names
        width: parent.width
        height: Tone.px(22)
        Repeater {
            model: root.months
            Item {
                required property var modelData
                required property int index
                x: Math.round(root.at(modelData.day))
                height: names.height
                Rectangle {
                    width: Tone.hair
                    height: parent.index % root.step === 0 ? parent.height : 5
                    anchors.bottom: parent.bottom
                    color: Tone.line
                }
                BodyText {
                    visible: parent.index % root.step === 0 && parent.x + implicitWidth + 4 < root.width
                    x: 4
                    text: parent.modelData.label
                    level: "small"
                    quiet: true
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
    }
    Rectangle { x: Math.round(root.at(0) - width / 2); y: names.height - 8; width: Tone.stroke; height: root.height - y; color: Tone.ink; z: 1 }
    Item {
        id: strip
        y: names.height + 2
        width: parent.width
        height: Tone.px(22)
        visible: root.stays.length > 0
        Repeater {
            model: root.stays
            Rectangle {
                required property var modelData
                x: root.at(modelData.fromDay)
                width: Math.max(2, root.at(modelData.toDay) - x - 1)
                height: strip.height
                color: Tone.band
                border.width: modelData.covered ? Tone.stroke : Tone.hair
                border.color: modelData.covered ? Tone.quiet : Tone.line
                BodyText {
                    visible: width > Tone.px(30)
                    anchors { fill: parent; leftMargin: 5 }
                    text: parent.modelData.name
                    level: "small"
                    quiet: true
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    verticalAlignment: Text.AlignVCenter
                    Accessible.ignored: true
                }
            }
        }
    }
}
