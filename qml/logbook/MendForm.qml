// SPDX-License-Identifier: Apache-2.0
// Work done on a finding. A later look confirms it; until then it counts as mended, not as passed.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {slug, word}
    required property var actions
    property string action: ""
    signal sent(var mend)

    spacing: 10

    BodyText { text: qsTr("Write down a mend"); level: "head"; Layout.fillWidth: true }
    Choice { label: qsTr("What kind of work"); answers: root.actions.map(one => ({ slug: one.slug, name: one.word })); chosen: root.action; Layout.fillWidth: true; onPicked: slug => root.action = slug }
    Field { id: what; label: qsTr("What was done"); Layout.fillWidth: true }
    Field { id: parts; label: qsTr("With what and how many"); note: qsTr("such as lap sealant, 2 cartridges; 3 x rivet 3/16 in"); Layout.fillWidth: true }
    Field { id: minutes; label: qsTr("Minutes"); numeric: true; Layout.fillWidth: true }
    Field { id: cost; label: qsTr("Cost"); inputMethodHints: Qt.ImhPreferNumbers; Layout.fillWidth: true }
    BodyText { text: qsTr("Brakes, gas, mains and tires: by licensed people, and to the maker's figures."); level: "small"; quiet: true; Layout.fillWidth: true }
    ActButton {
        text: qsTr("Write down the mend")
        enabled: root.action !== ""
        detail: root.action === "" ? qsTr("first tell what kind of work") : ""
        filled: true
        Layout.fillWidth: true
        onClicked: root.sent({ action: root.action, what: what.text, parts: parts.text, cost: cost.text, minutes: minutes.text })
    }
}
