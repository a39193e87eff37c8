// SPDX-License-Identifier: Apache-2.0
// A question with its answers as words in a row; nothing is chosen until a person does.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style

Column {
    id: root

    property string label: ""
    /// Answers as {slug, name}.
    required property var answers
    property string chosen: ""
    property string problem: ""
    signal picked(string slug)

    // A plain column: a layout keeps the height that the label had while it was narrow.
    spacing: 4
    Layout.preferredWidth: 10 // else the chips' widths and this width ask each other

    BodyText { visible: root.label !== ""; text: root.label; level: "small"; quiet: true; width: root.width }
    Flow {
        id: row
        width: root.width
        spacing: Tone.gap
        Repeater {
            model: root.answers
            Chip {
                required property var modelData
                width: row.width > 0 ? Math.min(implicitWidth, row.width) : implicitWidth
                text: modelData.name
                spoken: root.label === "" ? text : qsTr("%1: %2", "question: answer").arg(root.label).arg(text)
                checkable: true
                checked: root.chosen === modelData.slug
                onClicked: root.picked(modelData.slug)
                // a press flips `checked`; only the owner of the answer decides what is chosen
                onToggled: checked = Qt.binding(() => root.chosen === modelData.slug)
            }
        }
    }
    BodyText { visible: root.problem !== ""; text: root.problem; level: "small"; font.bold: true; width: root.width }
}
