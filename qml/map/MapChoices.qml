// SPDX-License-Identifier: Apache-2.0
// What the map shows, what its shapes mean, and whose data it is drawn from.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property MapModel map

    readonly property var shapes: [
        { shape: "hold", text: qsTr("a finding by its call: hold") }, { shape: "mend", text: qsTr("mend soon", "call") }, { shape: "watch", text: qsTr("watch", "call") },
        { shape: "past", text: qsTr("a finding that is mended or gone") }, { shape: "stay", text: qsTr("a stay") }, { shape: "end", text: qsTr("the end of a trip") }]

    spacing: 4

    Flow {
        id: row
        spacing: Tone.gap
        Layout.fillWidth: true
        Layout.topMargin: 6
        Repeater {
            model: root.map.wishes
            Chip {
                required property var modelData
                width: Math.min(implicitWidth, row.width)
                text: modelData.name
                checked: modelData.on
                Accessible.role: Accessible.CheckBox
                onToggled: {
                    const on = checked, slug = modelData.slug;
                    checked = Qt.binding(() => modelData.on);
                    root.map.wish(slug, on);
                }
            }
        }
    }
    Repeater {
        model: root.shapes
        RowLayout {
            id: line
            required property var modelData
            spacing: 12
            MapShape { shape: line.modelData.shape }
            BodyText { text: line.modelData.text; level: "small"; Layout.fillWidth: true }
        }
    }
    BodyText { text: qsTr("A number says how many lie there. A broken line is a worse road. Press a line for its trip, bare land to bring it to the middle."); level: "small"; quiet: true; Layout.fillWidth: true }
}
