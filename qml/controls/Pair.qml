// SPDX-License-Identifier: Apache-2.0
// Words and what stands against them: side by side, or one under the other when words are large.
import QtQuick
import Snugwalk.Style

Item {
    id: root

    property alias text: first.text
    property alias against: second.text
    property alias first: first
    property alias second: second

    readonly property bool beside: root.width > Tone.px(300) || measure.advanceWidth < root.width * 0.2
    readonly property real share: root.against === "" ? 0 : Math.min(Math.ceil(measure.advanceWidth) + 2, root.width * 0.5)

    implicitHeight: root.beside ? Math.max(first.height, second.visible ? second.height : 0) : first.height + (second.visible ? second.height : 0)

    TextMetrics { id: measure; text: second.text; font: second.font }
    BodyText {
        id: first
        width: root.beside ? root.width - root.share - (root.share > 0 ? 12 : 0) : root.width
        Accessible.ignored: true
    }
    BodyText {
        id: second
        visible: text !== ""
        level: "small"
        x: root.beside ? root.width - width : 0
        y: root.beside ? 0 : first.height
        width: root.beside ? root.share : root.width
        horizontalAlignment: root.beside ? Text.AlignRight : Text.AlignLeft
        Accessible.ignored: true
    }
}
