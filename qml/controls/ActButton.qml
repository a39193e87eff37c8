// SPDX-License-Identifier: Apache-2.0
// A wide act at the thumb: outlined or, when it leads on, filled with ink. May carry a second line.
import QtQuick
import Snugwalk.Style

Press {
    id: root

    property string detail: ""
    property bool filled: false
    /// A state's shape before the words; "" for none.
    property string glyph: ""
    property int size: Tone.head

    readonly property color words: !root.enabled ? Tone.quiet : root.filled ? Tone.paper : Tone.ink
    readonly property real lead: root.glyph === "" ? 0 : shape.width + 12

    padding: 10
    spoken: root.detail === "" ? root.text : qsTr("%1. %2", "name of a button, what it leads to").arg(root.text).arg(root.detail)

    TextMetrics { id: measure; text: root.text; font: title.font }

    // made at once, not on demand: asking for its height would make it, and change that height
    contentItem: Item { // qmllint disable
        id: content
        implicitWidth: measure.advanceWidth + root.lead + 4
        implicitHeight: title.height + (detail.visible ? detail.height + 2 : 0)
        Item {
            id: middle
            anchors.centerIn: parent
            width: parent.width
            height: parent.implicitHeight
            Glyph {
                id: shape
                visible: root.glyph !== ""
                kind: root.glyph
                size: Tone.px(28)
                x: title.x - root.lead
                y: title.y + (title.height - height) / 2
                Accessible.ignored: true
            }
            BodyText {
                id: title
                width: Math.min(measure.advanceWidth + 4, content.width - root.lead)
                x: (content.width - width + root.lead) / 2
                text: root.text
                color: root.words
                font.pixelSize: root.size
                font.bold: true
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }
            BodyText {
                id: detail
                visible: root.detail !== ""
                y: title.height + 2
                width: content.width
                text: root.detail
                level: "small"
                color: root.words
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }
        }
    }
    background: Rectangle {
        color: root.filled && root.enabled ? Tone.ink : Tone.paper
        radius: Tone.corner
        border.width: Tone.stroke
        border.color: root.enabled ? Tone.ink : Tone.line
        Rectangle { anchors.fill: parent; radius: Tone.corner; color: Tone.quiet; opacity: root.down ? 0.35 : 0 }
    }
}
