// SPDX-License-Identifier: Apache-2.0
// One band on the season line: thin from early to late, a ring at likely, a tall stroke where it is time
// to look. It never fills.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style

Item {
    id: root

    /// Days from today; NaN where there is none.
    required property real early
    required property real likely
    required property real late
    /// Time to look, by severity; NaN shows none.
    property real alert: NaN
    /// Where the catalogue alone would put it; NaN shows none.
    property real nominal: NaN
    /// Days the line shows, first and last.
    required property real firstDay
    required property real lastDay

    /// {label, day}: where months begin.
    required property var months

    readonly property bool dated: !isNaN(root.likely)
    readonly property real ring: Tone.px(14)
    readonly property real room: root.width - root.ring

    function at(day: real): real {
        const part = (day - root.firstDay) / (root.lastDay - root.firstDay);
        return root.ring / 2 + Math.max(0, Math.min(1, part)) * root.room;
    }
    function inside(day: real): bool { return day >= root.firstDay && day <= root.lastDay }

    implicitHeight: root.ring + 14

    Repeater {
        model: root.months
        Rectangle {
            required property var modelData
            x: Math.round(root.at(modelData.day))
            width: Tone.hair
            height: root.height
            color: Tone.line
            opacity: 0.6
        }
    }
    Rectangle { x: Math.round(root.at(0) - width / 2); width: Tone.stroke; height: root.height; color: Tone.ink }
    Rectangle {
        visible: root.dated
        x: root.at(isNaN(root.early) ? root.likely : root.early)
        width: Math.max(1, root.at(isNaN(root.late) ? root.likely : root.late) - x)
        height: Tone.stroke
        y: Math.round((root.height - height) / 2)
        color: Tone.ink
    }
    Repeater {
        model: [root.early, root.late]
        Rectangle {
            required property real modelData
            visible: root.dated && !isNaN(modelData) && root.inside(modelData)
            x: Math.round(root.at(modelData) - width / 2)
            width: Tone.stroke
            height: 10
            y: Math.round((root.height - height) / 2)
            color: Tone.ink
        }
    }
    Rectangle {
        visible: root.dated && !isNaN(root.nominal) && root.inside(root.nominal)
        x: Math.round(root.at(root.nominal) - width / 2)
        width: Tone.hair
        height: root.height - 2
        y: 1
        color: Tone.quiet
    }
    Rectangle {
        visible: root.dated && !isNaN(root.alert) && root.inside(root.alert)
        x: Math.round(root.at(root.alert) - width / 2)
        width: Tone.stroke * 2
        height: root.height - 4
        y: 2
        color: Tone.ink
    }
    // before or after what the line shows: a pointer out of it, never a ring on a day that is not meant
    Text {
        visible: root.dated && !root.inside(root.likely)
        x: root.likely < root.firstDay ? 0 : root.width - width
        anchors.verticalCenter: parent.verticalCenter
        text: root.likely < root.firstDay ? "\u2039" : "\u203a"
        font.family: Tone.words
        font.pixelSize: Math.round(root.height * 0.7)
        font.bold: true
        color: Tone.ink
        Accessible.ignored: true
    }
    Rectangle {
        visible: root.dated && root.inside(root.likely)
        x: root.at(root.likely) - width / 2
        y: Math.round((root.height - height) / 2)
        width: root.ring
        height: root.ring
        radius: root.ring / 2
        color: Tone.paper
        border.width: Tone.stroke
        border.color: Tone.ink
    }
}
