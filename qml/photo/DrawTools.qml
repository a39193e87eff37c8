// SPDX-License-Identifier: Apache-2.0
// What to draw, how long a ruler is, and the ways back.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property DrawingModel drawing
    property string tool: "circle"
    /// Whether the board has its first end and waits for the second.
    property bool begun: false
    readonly property string length: root.tool === "ruler" ? length.text : ""

    readonly property string hint: root.tool === "circle" ? (root.begun ? qsTr("Now touch the rim.") : qsTr("Touch the middle, then the rim; or drag."))
        : root.tool === "arrow" ? (root.begun ? qsTr("Now touch what it points at.") : qsTr("Touch the tail, then what it points at; or drag."))
        : root.begun ? qsTr("Now touch the other end.") : qsTr("Touch one end, then the other; or drag.")

    spacing: 6

    Choice {
        answers: [{ slug: "circle", name: qsTr("circle", "tool") }, { slug: "arrow", name: qsTr("arrow", "tool") }, { slug: "ruler", name: qsTr("ruler", "tool") }]
        chosen: root.tool
        Layout.fillWidth: true
        onPicked: slug => root.tool = slug
    }
    Field {
        id: length
        visible: root.tool === "ruler"
        label: root.drawing.scaled ? qsTr("Length, if known; left empty it is told from the first ruler") : qsTr("Known length, such as that of a tape or a rivet head")
        note: qsTr("such as 120 mm or 4 3/4 in")
        problem: root.drawing.problem
        inputMethodHints: Qt.ImhNoPredictiveText
        Layout.fillWidth: true
    }
    BodyText { text: root.hint; level: "small"; quiet: !root.begun; Layout.fillWidth: true }
    Flow {
        spacing: 10
        Layout.fillWidth: true
        WordButton { text: qsTr("erase last", "line on a photo"); enabled: root.drawing.shapes.length > 0; onClicked: root.drawing.eraseLast() }
        WordButton { text: qsTr("erase all", "lines on a photo"); enabled: root.drawing.shapes.length > 0; onClicked: root.drawing.eraseAll() }
        WordButton { text: qsTr("undo"); enabled: root.drawing.canUndo; onClicked: root.drawing.undo() }
    }
}
