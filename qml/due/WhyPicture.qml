// SPDX-License-Identifier: Apache-2.0
// How a date comes about: a thread that hangs from the catalogue's date, takes one step sooner or later a
// cause, and ends in the ring of the likely date on its band.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    /// See why_picture.hpp.
    required property var picture

    readonly property var steps: root.picture.steps ?? []
    readonly property real ring: Tone.px(14)
    /// Room for one line of words, or for more where the picture is narrow for them.
    readonly property real words: Tone.px(22) * (root.width < Tone.px(260) ? 3 : root.width < Tone.px(520) ? 2 : 1)
    /// A step: its words, then its line.
    readonly property real row: root.words + Tone.px(18)
    readonly property real head: root.words + 6

    function at(day: real): real {
        const first = root.picture.firstDay ?? 0, last = root.picture.lastDay ?? 1;
        return root.ring / 2 + (day - first) / (last - first) * (root.width - root.ring);
    }

    implicitHeight: root.head + root.row * (root.steps.length + 2)
    Accessible.role: Accessible.Graphic
    Accessible.name: root.picture.spoken ?? ""

    Repeater {
        model: root.picture.ticks ?? []
        Item {
            id: tick
            required property var modelData
            x: Math.round(root.at(modelData.day))
            height: root.height
            Rectangle { width: Tone.hair; height: parent.height; color: Tone.line; opacity: 0.6 }
            BodyText {
                x: Math.min(4, root.width - tick.x - width)
                text: tick.modelData.text
                level: "small"
                quiet: true
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }
    Rectangle { x: Math.round(root.at(0) - width / 2); y: root.words; width: Tone.stroke; height: root.height - y; color: Tone.ink; opacity: 0.5 }
    Leg { down: 0; from: root.picture.nominal ?? 0; to: from; name: qsTr("by the catalogue alone"); text: root.picture.nominalText ?? ""; first: true }
    Repeater {
        model: root.steps
        Leg {
            required property var modelData
            required property int index
            down: index + 1
            from: modelData.from
            to: modelData.to
            name: modelData.name
            text: modelData.text
        }
    }
    Leg { down: root.steps.length + 1; from: root.picture.likely ?? 0; to: from; name: qsTr("likely"); text: root.picture.likelyText ?? ""; last: true }

    /// The thread comes down at `from`, and leaves along the line to `to`.
    component Leg: Item {
        id: leg
        required property int down
        required property real from
        required property real to
        required property string name
        required property string text
        property bool first: false
        property bool last: false

        readonly property real begins: root.at(Math.min(leg.from, leg.to))
        readonly property real ends: root.at(Math.max(leg.from, leg.to))
        readonly property real line: root.words + Tone.px(8)
        readonly property real thread: root.at(leg.from)
        /// Words stand beside the thread, on the side that it leaves; over it only where neither side has room.
        readonly property real room: plate.width + 8
        readonly property bool onLeft: leg.thread >= leg.room && (leg.to >= leg.from || root.width - leg.thread < leg.room)

        y: root.head + leg.down * root.row
        width: root.width
        height: root.row

        Rectangle { visible: !leg.first; x: Math.round(root.at(leg.from) - width / 2); y: leg.line - root.row; width: Tone.stroke; height: root.row; color: Tone.ink }
        Rectangle { visible: leg.last; x: root.at(root.picture.early ?? 0); y: leg.line - height / 2; width: Math.max(1, root.at(root.picture.late ?? 0) - x); height: Tone.stroke; color: Tone.ink }
        Rectangle { visible: !leg.last && !leg.first; x: leg.begins - Tone.stroke / 2; y: leg.line - height / 2; width: Math.max(Tone.stroke, leg.ends - leg.begins + Tone.stroke); height: Tone.stroke * 2; color: Tone.ink }
        Rectangle { visible: leg.first; x: Math.round(root.at(leg.from) - width / 2); y: leg.line - height / 2; width: Tone.stroke * 2; height: root.ring; color: Tone.ink }
        Rectangle {
            visible: leg.last
            x: root.at(leg.from) - width / 2
            y: leg.line - height / 2
            width: root.ring
            height: root.ring
            radius: root.ring / 2
            color: Tone.paper
            border.width: Tone.stroke
            border.color: Tone.ink
        }
        Rectangle {
            id: plate
            width: label.width + 6
            height: root.words
            x: leg.onLeft ? leg.thread - leg.room : Math.max(0, Math.min(root.width - width, leg.thread + 8))
            color: Tone.paper
            BodyText {
                id: label
                x: 3
                width: Math.min(implicitWidth, root.width - 6)
                anchors.bottom: parent.bottom
                text: qsTr("%1, %2", "cause, months sooner or later").arg(leg.name).arg(leg.text)
                level: "small"
                font.bold: leg.first || leg.last
                Accessible.ignored: true
            }
        }
    }
}
