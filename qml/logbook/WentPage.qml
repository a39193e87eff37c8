// SPDX-License-Identifier: Apache-2.0
// How it went: weathering, shake, cost, concern and readings over time, each as a plot and as its numbers.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property PlotsModel plots
    /// A kind, or kind/subject; "" for the first.
    property string thing: ""

    readonly property var all: root.plots.plots
    readonly property var plot: root.all[root.plots.which] ?? null
    readonly property var rows: root.plot?.rows ?? []
    readonly property bool drawn: root.plot !== null && root.plot.empty === ""
    readonly property var fault: root.plots.fault
    property int row: -1
    property bool counted: false

    onPlotChanged: root.row = -1
    Component.onCompleted: root.plots.open(root.thing)
    Component.onDestruction: root.plots.close()

    spacing: 8

    BodyText { text: qsTr("How it went"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    Choice {
        answers: Array.from(root.plots.kinds)
        chosen: root.plots.kind
        Layout.fillWidth: true
        onPicked: slug => root.plots.kind = slug
    }
    Choice {
        visible: root.plots.subjects.length > 1
        label: qsTr("Of what", "a plot is about it")
        answers: Array.from(root.plots.subjects)
        chosen: root.plots.subject
        Layout.fillWidth: true
        onPicked: slug => root.plots.subject = slug
    }
    Choice {
        visible: root.all.length > 1
        label: qsTr("Which", "one of several plots")
        answers: root.all.map((one, at) => ({ slug: String(at), name: one.title }))
        chosen: String(root.plots.which)
        Layout.fillWidth: true
        onPicked: slug => root.plots.which = Number(slug)
    }
    BodyText { visible: root.plots.busy; text: qsTr("Working it out …"); quiet: true; Layout.fillWidth: true }
    BodyText { visible: root.plot !== null; text: root.plot?.title ?? ""; level: "head"; Layout.fillWidth: true; Layout.topMargin: 4 }
    BodyText { visible: text !== ""; text: root.plot?.empty ?? ""; Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: root.plot?.about ?? ""; Layout.fillWidth: true }
    PlotBoard {
        id: board
        visible: root.drawn
        picture: root.plots.serial >= 0 && root.drawn ? root.plots.picture(board.wide, Math.max(Tone.px(250), Math.min(board.wide * 0.6, 480)), Tone.small, Tone.stroke, Tone.words) : ({})
        spoken: root.plot === null ? "" : qsTr("%1, plot: %2", "title, sentence").arg(root.plot.title).arg(root.plot.about)
        row: root.row
        told: root.rows[root.row]?.words ?? ""
        Layout.fillWidth: true
        onMoved: row => root.row = row
    }
    BodyText { visible: root.drawn; text: root.rows[root.row]?.words ?? qsTr("Press the plot, or go along it, to read its numbers."); font.bold: root.row >= 0; Layout.fillWidth: true; Layout.minimumHeight: Tone.px(44); Accessible.role: Accessible.AlertMessage }
    RowLayout {
        visible: root.drawn
        spacing: 8
        Layout.fillWidth: true
        WordButton { text: qsTr("earlier", "go back in time along a plot"); enabled: root.row !== 0; Layout.fillWidth: true; onClicked: board.step(-1) }
        WordButton { text: qsTr("later", "go on in time along a plot"); enabled: root.row !== root.rows.length - 1; Layout.fillWidth: true; onClicked: board.step(1) }
    }
    Repeater {
        model: root.plot?.notes ?? []
        BodyText { required property string modelData; text: modelData; level: "small"; quiet: true; Layout.fillWidth: true }
    }
    WordButton { visible: root.plots.hasMore; text: root.plots.all ? qsTr("the last two years alone") : qsTr("every month there is"); Layout.fillWidth: true; onClicked: root.plots.all = !root.plots.all }
    WordButton { visible: root.drawn; text: root.counted ? qsTr("fold the numbers") : qsTr("all its numbers"); Layout.fillWidth: true; onClicked: root.counted = !root.counted }
    Repeater {
        model: root.counted && root.drawn ? [...root.rows].reverse() : []
        LabelRow {
            required property var modelData
            label: modelData.cells[0]
            value: modelData.cells.slice(1).map((cell, at) => cell === "" ? "" : root.plot.head[at + 1] + " " + cell).filter(one => one !== "").join("; ")
            Layout.fillWidth: true
        }
    }
    Repeater {
        model: root.drawn ? root.plots.forms : []
        SaveAct {
            required property var modelData
            text: qsTr("Save: %1", "kind of file").arg(modelData.name)
            enabled: !(root?.plots?.busy ?? true)
            filters: [modelData.filter]
            ending: modelData.slug
            suggested: root?.plots?.suggested(modelData.slug) ?? ""
            Layout.fillWidth: true
            onChosen: file => root.plots.save(modelData.slug, file)
        }
    }
    BodyText { visible: root.plots.saved !== ""; text: qsTr("Written: %1", "file name").arg(root.plots.saved); font.bold: true; Layout.fillWidth: true; Accessible.role: Accessible.AlertMessage }
    Once {
        wanted: (root.fault.what ?? "") !== ""
        ColumnLayout {
            spacing: 2
            Layout.fillWidth: true
            BodyText { text: root.fault.what ?? ""; level: "head"; Layout.fillWidth: true; Accessible.role: Accessible.AlertMessage }
            BodyText { visible: text !== ""; text: root.fault.act ?? ""; font.bold: true; Layout.fillWidth: true }
        }
    }
}
