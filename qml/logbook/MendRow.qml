// SPDX-License-Identifier: Apache-2.0
// One mend: when, what, at what cost.
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    required property string date
    required property string what
    required property string cost

    implicitHeight: column.implicitHeight + 20
    Accessible.role: Accessible.ListItem
    Accessible.name: Format.join([root.date, root.what, root.cost], ", ")

    Column {
        id: column
        anchors { left: parent.left; right: parent.right; leftMargin: Tone.margin; rightMargin: Tone.margin; verticalCenter: parent.verticalCenter }
        BodyText { width: parent.width; text: root.what; Accessible.ignored: true }
        BodyText { width: parent.width; text: Format.join([root.date, root.cost], ", "); level: "small"; quiet: true; Accessible.ignored: true }
    }
    Rule { width: parent.width; anchors.bottom: parent.bottom }
}
