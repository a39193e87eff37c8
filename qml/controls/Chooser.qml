// SPDX-License-Identifier: Apache-2.0
// Several answers at once, as words to press; each press adds or takes away one.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style

ColumnLayout {
    id: root

    property string label: ""
    required property var answers
    property var chosen: []
    signal flipped(var chosen)

    function flip(slug: string) {
        const at = root.chosen.indexOf(slug);
        root.chosen = at < 0 ? Array.from(root.chosen).concat([slug]) : Array.from(root.chosen).filter(one => one !== slug);
        root.flipped(root.chosen);
    }

    spacing: 4

    BodyText { visible: root.label !== ""; text: root.label; level: "small"; quiet: true; Layout.fillWidth: true }
    Flow {
        id: row
        spacing: Tone.gap
        Layout.fillWidth: true
        Layout.preferredWidth: 10 // else the chips' widths and this width ask each other
        Repeater {
            model: root.answers
            Chip {
                required property var modelData
                width: row.width > 0 ? Math.min(implicitWidth, row.width) : implicitWidth
                text: modelData.name
                checkable: true
                checked: root.chosen.indexOf(modelData.slug) >= 0
                Accessible.role: Accessible.CheckBox
                onClicked: root.flip(modelData.slug)
                onToggled: checked = Qt.binding(() => root.chosen.indexOf(modelData.slug) >= 0)
            }
        }
    }
}
