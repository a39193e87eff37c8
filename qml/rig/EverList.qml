// SPDX-License-Identifier: Apache-2.0
// Every place where something was ever found, those found most often first.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property RigModel rig
    /// The number of the place pressed on the drawing; 0 for none.
    property int chosen: 0
    signal opened(string findingId)
    /// The row of the place pressed, to be scrolled to.
    signal shown(Item row)

    spacing: 0

    BodyText {
        text: root.rig.everPlaces.length === 0 ? qsTr("Nothing was ever found at a place.") : qsTr("Found ever, by place: the number in the shape says how often. Its edge is dashed where nothing is open. A hand's breadth counts as one place.")
        level: "small"
        quiet: true
        Layout.fillWidth: true
        Layout.bottomMargin: 4
    }
    Repeater {
        model: root.rig.everPlaces
        EverRow {
            id: row
            required property var modelData
            place: row.modelData
            chosen: root.chosen === row.modelData.number
            onChosenChanged: if (row.chosen) root.shown(row)
            Layout.fillWidth: true
            onClicked: root.opened(row.modelData.findingId)
        }
    }
    BodyText { visible: text !== ""; text: root.rig.everElsewhere; level: "small"; quiet: true; Layout.fillWidth: true; Layout.topMargin: 4 }
}
