// SPDX-License-Identifier: Apache-2.0
// What waits for a person's word: things written differently, and entries set aside.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property ConflictsModel conflicts
    readonly property bool empty: root.conflicts.conflicts.length + root.conflicts.aside.length === 0

    Component.onCompleted: root.conflicts.clear()

    spacing: 12

    BodyText { text: qsTr("What differs"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: root.empty; text: qsTr("Nothing was written differently, and nothing is set aside."); quiet: true; Layout.fillWidth: true }
    BodyText { visible: root.conflicts.conflicts.length > 0; text: qsTr("Two people wrote without knowing of each other. The choice is written as an entry of its own; both versions stay in the record."); Layout.fillWidth: true }
    FaultBlock { fault: root.conflicts.fault; Layout.fillWidth: true }
    Repeater {
        model: root.conflicts.conflicts
        ConflictRow {
            required property var modelData
            conflict: modelData
            able: !root.conflicts.busy
            Layout.fillWidth: true
            onChosen: index => root.conflicts.choose(modelData.key, index)
        }
    }
    BodyText { visible: root.conflicts.aside.length > 0; text: qsTr("Set aside"); level: "head"; Layout.fillWidth: true; Layout.topMargin: 8 }
    BodyText { visible: root.conflicts.aside.length > 0; text: root.conflicts.mayAdopt ? qsTr("These entries do not count. Take over what you have looked at and want to stand.") : qsTr("These entries do not count. Only an owner can take them over."); Layout.fillWidth: true }
    Repeater {
        model: root.conflicts.aside
        AsideRow {
            required property var modelData
            entry: modelData
            mayAdopt: root.conflicts.mayAdopt
            able: !root.conflicts.busy
            Layout.fillWidth: true
            onAdopted: root.conflicts.adopt(modelData.key)
        }
    }
    ActButton {
        visible: root.conflicts.mayAdopt && root.conflicts.aside.length > 1
        text: qsTr("Take over all of them")
        enabled: !root.conflicts.busy
        Layout.fillWidth: true
        onClicked: root.conflicts.adopt("")
    }
}
