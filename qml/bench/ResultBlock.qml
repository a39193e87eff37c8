// SPDX-License-Identifier: Apache-2.0
// One figure with its range, where it comes from and what it warns of.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {label, value, range, basis, source, warnings}
    required property var result

    spacing: 2

    Rule { Layout.fillWidth: true }
    BodyText { text: root.result.label; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { text: root.result.value; font.pixelSize: Tone.px(34); font.bold: true; Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: root.result.range ?? ""; level: "small"; Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: Format.join([root.result.basis, root.result.source], ": "); level: "small"; quiet: true; Layout.fillWidth: true }
    Repeater {
        model: root.result.warnings ?? []
        BodyText { required property string modelData; text: modelData; font.bold: true; level: "small"; Layout.fillWidth: true }
    }
}
