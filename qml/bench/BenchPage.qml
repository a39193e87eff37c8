// SPDX-License-Identifier: Apache-2.0
// Tire pressure: what to set now so that it is never under the placard later.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property BenchModel bench

    readonly property var asked: [
        { key: "placard", name: qsTr("Placard pressure, cold") }, { key: "maxPressure", name: qsTr("Largest pressure of tire or wheel") },
        { key: "pressureNow", name: qsTr("Pressure now") }, { key: "temperatureNow", name: qsTr("Air now") },
        { key: "temperatureColdest", name: qsTr("Coldest start to come") }, { key: "altitudeNow", name: qsTr("Height above the sea now") },
        { key: "altitudeThen", name: qsTr("Height above the sea then") }]

    spacing: 0

    CautionPanel { visible: root.bench.caution !== ""; lines: [root.bench.caution]; Layout.fillWidth: true }
    Scroll {
        spacing: 12
        Layout.fillWidth: true
        Layout.fillHeight: true
        BodyText { text: qsTr("Tire pressure"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
        BodyText { visible: root.bench.problem !== ""; text: root.bench.problem; font.bold: true; Layout.fillWidth: true }
        Repeater {
            model: root.bench.results
            ResultBlock { required property var modelData; result: modelData; Layout.fillWidth: true }
        }
        Rule { Layout.fillWidth: true }
        GridLayout {
            columns: Math.max(1, Math.floor(width / Tone.px(230)))
            columnSpacing: 16
            rowSpacing: 10
            Layout.fillWidth: true
            Repeater {
                model: root.asked
                Field {
                    required property var modelData
                    label: modelData.name
                    text: root.bench.typed[modelData.key] ?? ""
                    numeric: true
                    inputMethodHints: Qt.ImhPreferNumbers | Qt.ImhNoPredictiveText
                    Layout.fillWidth: true
                    Layout.alignment: Qt.AlignTop
                    input.onEditingFinished: root.bench.set(modelData.key, text)
                }
            }
        }
    }
}
