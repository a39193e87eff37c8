// SPDX-License-Identifier: Apache-2.0
// A photo in full, with circle, arrow and ruler to draw on it. The photo itself stays as it is.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Item {
    id: root

    required property DrawingModel drawing
    required property SyncModel sync
    /// Hash, or the address of a file that is still to be written down; "" for the newest there is.
    property string photo: ""
    /// Over another page: the way back to it is here.
    property bool inner: false
    signal done()

    readonly property bool wide: root.width > root.height
    readonly property bool known: root.drawing.photo !== ""
    readonly property bool away: Array.from(root.sync.elsewhere).includes(root.drawing.photo)

    Component.onCompleted: root.drawing.open(root.photo)

    Rectangle { anchors.fill: parent; color: Tone.paper }
    GridLayout {
        anchors { fill: parent; margins: Tone.margin; topMargin: 6; bottomMargin: Tone.gap }
        columns: root.wide ? 2 : 1
        rowSpacing: Tone.gap
        columnSpacing: Tone.margin
        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true
            Layout.columnSpan: root.wide ? 2 : 1
            BodyText { text: qsTr("Draw on the photo"); level: "head"; Layout.fillWidth: true }
            BodyText { text: root.known ? Format.join([root.drawing.words, qsTr("lines are kept beside the photo, which stays as it is")], "; ") : qsTr("No finding with a photo is open."); visible: text !== "" && root.height > Tone.px(480); level: "small"; quiet: true; Layout.fillWidth: true }
            BodyText { visible: root.away; text: qsTr("This is its small picture: the photo itself is on another device."); Layout.fillWidth: true }
            WordButton { visible: root.away && root.sync.asked === ""; text: qsTr("ask for the photo in full"); enabled: root.sync.busyWith === ""; Layout.fillWidth: true; onClicked: root.sync.ask(root.drawing.photo) }
            BodyText { visible: root.away && text !== ""; text: root.sync.asked; level: "small"; Layout.fillWidth: true }
        }
        PhotoBoard {
            visible: root.known
            photo: root.drawing.photo
            shapes: root.drawing.shapes
            tool: tools.tool
            caption: root.drawing.words
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: 120
            onBegunChanged: tools.begun = begun
            onDrawn: (x1, y1, x2, y2, aspect) => root.drawing.add(tools.tool, x1, y1, x2, y2, aspect, tools.length)
        }
        Scroll {
            visible: root.known
            Layout.fillWidth: !root.wide
            Layout.preferredWidth: root.wide ? Math.max(Tone.px(250), root.width * 0.3) : -1
            Layout.fillHeight: root.wide
            Layout.preferredHeight: root.wide ? -1 : Math.min(tools.implicitHeight + Tone.margin + 1, root.height * 0.55)
            Layout.leftMargin: -Tone.margin
            Layout.rightMargin: -Tone.margin
            DrawTools { id: tools; drawing: root.drawing; Layout.fillWidth: true }
            ActButton { visible: root.inner; text: qsTr("Back to the finding"); size: Tone.body; Layout.fillWidth: true; onClicked: root.done() }
        }
        Item { visible: !root.known; Layout.fillHeight: true }
    }
}
