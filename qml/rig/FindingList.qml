// SPDX-License-Identifier: Apache-2.0
// The parts list of the drawing: every open finding, in the order the model gives (worst first).
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property RigModel rig
    signal opened(string findingId)

    spacing: 0

    BodyText {
        text: list.count === 0 ? qsTr("Nothing found is open. What was not looked at is not known.")
            : qsTr("%n open finding(s)", "heading over the list", list.count)
        level: "small"
        quiet: true
        Layout.fillWidth: true
        Layout.bottomMargin: 4
    }
    Repeater {
        id: list
        model: root.rig.findings
        FindingRow {
            Layout.fillWidth: true
            onOpened: id => root.opened(id)
        }
    }
}
