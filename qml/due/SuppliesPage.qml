// SPDX-License-Identifier: Apache-2.0
// The shopping list: what to get, what each is for, and what is on hand.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property SuppliesModel supplies

    readonly property var spans: [0, 90, 365]

    function named(days: var): var {
        return days.map(one => ({ slug: String(one), name: one === 0 ? qsTr("open findings and what is due") : qsTr("and what falls due in %n day(s)", "", one) }));
    }

    Component.onCompleted: root.supplies.open(root.supplies.days)

    spacing: 6

    BodyText { text: qsTr("To buy"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    Choice { answers: root.named(root.spans); chosen: String(root.supplies.days); Layout.fillWidth: true; onPicked: slug => root.supplies.open(Number(slug)) }
    BodyText { visible: root.supplies.rows.length === 0 && !root.supplies.busy; text: qsTr("Nothing found or due uses anything up."); quiet: true; Layout.fillWidth: true; Layout.topMargin: Tone.gap }
    Repeater {
        model: root.supplies.rows
        ColumnLayout {
            id: row
            required property var modelData
            spacing: 2
            Layout.fillWidth: true
            Layout.topMargin: Tone.gap
            Rule { Layout.fillWidth: true }
            Pair { text: row.modelData.name; against: row.modelData.get; first.font.bold: true; second.font.bold: true; Layout.fillWidth: true; Layout.topMargin: 4; Accessible.role: Accessible.StaticText; Accessible.name: text + ", " + against }
            BodyText { text: row.modelData.needed; level: "small"; Layout.fillWidth: true }
            Repeater {
                model: row.modelData.uses
                BodyText { required property string modelData; text: modelData; level: "small"; quiet: true; Layout.fillWidth: true }
            }
            RowLayout {
                spacing: 12
                Layout.fillWidth: true
                Field { id: have; label: qsTr("On hand"); note: row.modelData.onHand; inputMethodHints: Qt.ImhNoPredictiveText; Layout.fillWidth: true; onAccepted: root.supplies.setOnHand(row.modelData.item, text) }
                WordButton { text: qsTr("count it", "what is on hand"); enabled: have.text.trim() !== ""; onClicked: root.supplies.setOnHand(row.modelData.item, have.text) }
            }
        }
    }
    Repeater {
        model: root.supplies.cautions
        BodyText { required property string modelData; text: modelData; level: "small"; font.bold: true; Layout.fillWidth: true; Layout.topMargin: Tone.gap }
    }
}
