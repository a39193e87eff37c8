// SPDX-License-Identifier: Apache-2.0
// One question of the bench: cautions, what it asks for, the answer, its pictures, and keeping it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property BenchModel bench
    /// Name; "" for the one that was open, or the first.
    property string question: ""
    signal trendAsked(string point)
    signal whyAsked(string point)

    /// Figures that may stay empty are folded away where there are many.
    property bool unfolded: false
    readonly property bool answered: root.bench.figures.length > 0
    readonly property bool cramped: panel.implicitHeight > root.height * 0.45

    Component.onCompleted: root.bench.open(root.question)

    spacing: 0

    CautionPanel { id: panel; visible: root.bench.cautions.length > 0 && !root.cramped; lines: root.bench.cautions; Layout.fillWidth: true }
    Scroll {
        spacing: 10
        Layout.fillWidth: true
        Layout.fillHeight: true
        // where large words would leave no room to type, the cautions lead the page
        CautionPanel { visible: root.cramped; lines: root.bench.cautions; Layout.fillWidth: true; Layout.topMargin: 6 }
        BodyText { text: root.bench.title; level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
        BodyText { visible: text !== ""; text: root.bench.about; quiet: true; Layout.fillWidth: true }
        GridLayout {
            id: form
            columns: Math.max(1, Math.floor(width / Tone.px(260)))
            columnSpacing: 16
            rowSpacing: 10
            Layout.fillWidth: true
            Repeater {
                id: fields
                model: root.bench.inputs
                BenchField {
                    visible: needed || kept || problem !== "" || root.unfolded || fields.count <= 6
                    Layout.fillWidth: true
                    Layout.preferredWidth: 10
                    Layout.alignment: Qt.AlignTop
                    Layout.columnSpan: wide ? form.columns : 1
                    onSaid: text => root.bench.type(name, text)
                }
            }
        }
        Flow {
            id: ways
            spacing: 12
            Layout.fillWidth: true
            Layout.preferredWidth: 10
            WordButton { width: Math.min(implicitWidth, ways.width); visible: fields.count > 6 && !root.unfolded; text: qsTr("more figures, if known"); onClicked: root.unfolded = true }
            WordButton { width: Math.min(implicitWidth, ways.width); text: qsTr("a worked example"); onClicked: root.bench.showExample() }
            WordButton { width: Math.min(implicitWidth, ways.width); text: qsTr("start again", "takes away what was typed"); onClicked: root.bench.clear() }
        }
        BodyText { visible: text !== ""; text: root.bench.missing; font.bold: true; Layout.fillWidth: true }
        BodyText { visible: text !== ""; text: root.bench.problem; font.bold: true; Layout.fillWidth: true }
        Repeater {
            model: root.bench.figures
            FigureBlock { required property var modelData; required property int index; result: modelData; answer: index === 0; Layout.fillWidth: true }
        }
        CautionPanel { visible: root.bench.warnings.length > 0; lines: root.bench.warnings; Layout.fillWidth: true }
        Repeater {
            model: root.bench.lines
            BodyText { required property string modelData; text: modelData; Layout.fillWidth: true }
        }
        BodyText { visible: text !== ""; text: root.bench.assumed; level: "small"; quiet: true; Layout.fillWidth: true }
        Repeater {
            model: root.bench.pictures
            BenchPicture { required property var modelData; picture: modelData; Layout.fillWidth: true; onTrendAsked: point => root.trendAsked(point) }
        }
        KeepBlock { bench: root.bench; Layout.fillWidth: true }
        FittedBlock { bench: root.bench; Layout.fillWidth: true; onWhyAsked: point => root.whyAsked(point) }
    }
}
