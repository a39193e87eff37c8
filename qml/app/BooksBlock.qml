// SPDX-License-Identifier: Apache-2.0
// The logbook's file: a copy of it, a copy brought back, other logbooks, the invented rig.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property BooksModel books

    readonly property var known: Array.from(root.books.known)
    readonly property var filters: [qsTr("Logbooks (*.snugwalk)"), qsTr("All files (*)")]

    spacing: 4

    BodyText { text: qsTr("Logbook"); level: "head"; Layout.fillWidth: true }
    BodyText { text: root.books.file; level: "small"; quiet: true; wrapMode: Text.WrapAnywhere; Layout.fillWidth: true }
    Choice {
        visible: root.known.length > 1 && !root.books.isDemo
        label: qsTr("Logbooks of this device")
        answers: root.known.map(one => ({ slug: one.file, name: one.name }))
        chosen: root.books.file
        Layout.fillWidth: true
        onPicked: file => root.books.openBook(file)
    }
    WordButton { text: qsTr("back it up: copy it with its photos"); enabled: !root.books.busy; Layout.fillWidth: true; onClicked: target.ask() }
    WordButton { visible: root.books.canRestore; text: qsTr("bring a backup back, as a logbook of its own"); enabled: !root.books.busy; Layout.fillWidth: true; onClicked: source.ask() }
    WordButton { visible: root.books.demoOffered; text: qsTr("look round an invented rig"); enabled: !root.books.busy; Layout.fillWidth: true; onClicked: root.books.openDemo() }
    WordButton { visible: root.books.hasDemo && !root.books.isDemo; text: qsTr("remove the invented rig"); enabled: !root.books.busy; Layout.fillWidth: true; onClicked: root.books.forgetDemo() }
    BodyText { visible: text !== ""; text: root.books.step !== "" ? root.books.step : root.books.outcome; wrapMode: Text.Wrap; Layout.fillWidth: true }

    FilePick { id: target; over: root; title: qsTr("Where the copy goes"); filters: root.filters; saves: true; onChosen: file => root.books.backUp(file.endsWith(".snugwalk") ? file : file + ".snugwalk") }
    FilePick { id: source; over: root; title: qsTr("A backup of a logbook"); filters: root.filters; onChosen: file => root.books.restore(file) }
}
