// SPDX-License-Identifier: Apache-2.0
// One point over time: when it is due and why, and each of its readings against its limit.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property TrendModel trends
    /// Slug; "" for the first point with readings.
    property string point: ""

    Component.onCompleted: root.trends.open(root.point)

    spacing: 6

    BodyText { text: root.trends.title !== "" ? root.trends.title : qsTr("Readings over time"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: text !== ""; text: root.trends.when; level: "head"; Layout.fillWidth: true }
    Repeater {
        model: root.trends.why
        BodyText { required property string modelData; text: modelData; level: "small"; quiet: true; Layout.fillWidth: true }
    }
    BodyText { visible: root.trends.rows.length === 0 && !root.trends.busy; text: qsTr("No reading was taken here yet."); Layout.fillWidth: true; Layout.topMargin: Tone.gap }
    BodyText { visible: root.trends.rows.length === 0 && !root.trends.busy; text: qsTr("A reading is typed on a walk, at a line that measures something, such as the tires. Two of them make a trend."); quiet: true; Layout.fillWidth: true }
    Repeater {
        model: root.trends.rows
        // a plain column: a layout inside a layout measures words anew while it lays them out
        Column {
            id: row
            required property var modelData
            required property int index
            property int spot: -1
            readonly property var told: [...modelData.before, ...modelData.points]
            spacing: 4
            Layout.fillWidth: true
            Layout.preferredWidth: 10
            Layout.topMargin: Tone.gap
            Rule { width: row.width }
            BodyText { width: row.width; text: row.modelData.title; level: "head" }
            BodyText { width: row.width; text: row.modelData.sentence }
            PlotBoard {
                id: board
                visible: row.told.length > 0
                width: row.width
                height: implicitHeight
                picture: row.told.length > 0 ? root.trends.picture(row.index, board.wide, Math.max(Tone.px(230), Math.min(board.wide * 0.55, 420)), Tone.small, Tone.stroke, Tone.words) : ({})
                spoken: row.modelData.spoken
                row: row.spot
                told: row.told[row.spot] ? qsTr("%1: %2", "date, reading").arg(row.told[row.spot].date).arg(row.told[row.spot].text) : ""
                onMoved: at => row.spot = at
            }
            BodyText { visible: row.spot >= 0; width: row.width; text: row.told[row.spot] ? qsTr("%1: %2", "date, reading").arg(row.told[row.spot].date).arg(row.told[row.spot].text) : ""; font.bold: true; Accessible.role: Accessible.AlertMessage }
            BodyText { visible: text !== ""; width: row.width; text: row.modelData.basis; level: "small"; quiet: true }
            GridLayout {
                width: row.width
                columns: Math.max(1, Math.floor(row.width / Tone.px(330)))
                columnSpacing: 20
                rowSpacing: 0
                Repeater {
                    model: [...row.modelData.points].reverse()
                    LabelRow {
                        required property var modelData
                        label: modelData.date
                        value: modelData.text
                        Layout.fillWidth: true
                        Layout.preferredWidth: 10
                    }
                }
            }
        }
    }
}
