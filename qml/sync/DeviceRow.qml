// SPDX-License-Identifier: Apache-2.0
// One device of the rig; an owner may revoke it, after a plain word about what that cannot do.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {id, name, role, since, until, revoked, note, revocable}
    required property var device
    signal revoked(string reason)

    property bool asking: false

    spacing: 2

    Rule { Layout.fillWidth: true; Layout.bottomMargin: 6 }
    Pair { text: root.device.name; against: root.device.role; first.font.bold: !root.device.revoked; first.quiet: root.device.revoked; Layout.fillWidth: true; Accessible.role: Accessible.StaticText; Accessible.name: qsTr("%1: %2", "device, role").arg(root.device.name).arg(root.device.role) }
    BodyText { text: Format.join([root.device.since, root.device.until, root.device.note], "; "); level: "small"; quiet: true; Layout.fillWidth: true }
    WordButton {
        visible: root.device.revocable && !root.asking
        text: qsTr("revoke", "a device")
        spoken: qsTr("revoke %1", "device").arg(root.device.name)
        onClicked: root.asking = true
    }
    Once {
        wanted: root.asking
        ColumnLayout {
            spacing: 8
            Layout.fillWidth: true
            BodyText { text: qsTr("Revoking cannot take back what that device has read: it keeps it. From now on it gets nothing new, and what it writes from now on is set aside for you to look at. What it wrote and has not exchanged yet is set aside too."); font.bold: true; Layout.fillWidth: true }
            Field { id: reason; label: qsTr("Why, for the record; may stay empty"); Layout.fillWidth: true }
            ActButton { text: qsTr("Revoke %1", "device").arg(root.device.name); filled: true; Layout.fillWidth: true; onClicked: { root.asking = false; root.revoked(reason.text) } }
            WordButton { text: qsTr("leave it as it is"); onClicked: root.asking = false }
        }
    }
}
