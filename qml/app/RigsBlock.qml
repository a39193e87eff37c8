// SPDX-License-Identifier: Apache-2.0
// The rigs of this logbook: which one is under care, which are put away.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property Session session
    signal newRigAsked()

    readonly property var rigs: Array.from(root.session.rigs)
    readonly property var kept: root.rigs.filter(one => !one.archived)
    readonly property var current: root.rigs.find(one => one.current) ?? null

    spacing: 4

    Choice {
        visible: root.kept.length > 1
        label: qsTr("Rig under care")
        answers: root.kept.map(one => ({ slug: one.id, name: one.name }))
        chosen: root.current?.id ?? ""
        Layout.fillWidth: true
        onPicked: slug => root.session.chooseRig(slug)
    }
    WordButton { visible: root.current !== null && !root.current.archived; text: qsTr("put %1 away: not offered on this device, its logbook stays", "rig").arg(root.current?.name ?? ""); Layout.fillWidth: true; onClicked: root.session.archiveRig(root.current.id, true) }
    Repeater {
        model: root.rigs.filter(one => one.archived)
        WordButton { required property var modelData; text: qsTr("bring back %1", "rig that was put away").arg(modelData.name); Layout.fillWidth: true; onClicked: root.session.archiveRig(modelData.id, false) }
    }
    WordButton { text: qsTr("set up another rig"); Layout.fillWidth: true; onClicked: root.newRigAsked() }
}
