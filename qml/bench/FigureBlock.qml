// SPDX-License-Identifier: Apache-2.0
// One figure with its range and where it comes from; the answer is large, what goes with it less so.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {label, value, range, basis, source}
    required property var result
    property bool answer: false

    spacing: 2

    Rule { Layout.fillWidth: true }
    BodyText { text: root.result.label; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { text: root.result.value; font.pixelSize: root.answer ? Tone.px(34) : Tone.head; font.bold: true; Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: root.result.range ?? ""; level: "small"; Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: Format.join([root.result.basis, root.result.source], ": "); level: "small"; quiet: true; Layout.fillWidth: true }
}
