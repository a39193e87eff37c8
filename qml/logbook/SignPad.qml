// SPDX-License-Identifier: Apache-2.0
// A line to sign on with a finger, a pen or the mouse. Whoever cannot leaves the line empty and signs on paper.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    required property string who
    /// Lines of {x, y} in shares of the width.
    property var strokes: []
    signal signedNow(var strokes)
    signal gaveUp()

    function begin(x: real, y: real) {
        root.strokes = Array.from(root.strokes).concat([[root.share(x, y)]]);
    }
    function go(x: real, y: real) {
        const all = Array.from(root.strokes);
        all[all.length - 1] = Array.from(all[all.length - 1]).concat([root.share(x, y)]);
        root.strokes = all;
    }
    function share(x: real, y: real): var {
        return { x: Math.max(0, Math.min(1, x / sheet.width)), y: Math.max(0, Math.min(sheet.height, y)) / sheet.width };
    }

    spacing: 4

    BodyText { text: root.who; font.bold: true; Layout.fillWidth: true }
    Rectangle {
        id: sheet
        color: Tone.paper
        border.width: Tone.hair
        border.color: Tone.quiet
        Layout.fillWidth: true
        Layout.preferredHeight: width * 0.3 // as `signatureHeight` of reports
        Accessible.role: Accessible.Canvas
        Accessible.name: qsTr("sign here: %1", "who signs").arg(root.who)
        Rectangle { x: 12; width: parent.width - 24; height: Tone.hair; y: parent.height * 0.82; color: Tone.quiet }
        Canvas {
            id: drawn
            anchors.fill: parent
            readonly property var look: [root.strokes, Tone.theme]
            onLookChanged: requestPaint()
            onPaint: {
                const c = getContext("2d");
                c.reset();
                c.lineJoin = c.lineCap = "round";
                c.lineWidth = Tone.stroke * 1.5;
                c.strokeStyle = Tone.ink;
                for (const line of Array.from(root.strokes)) {
                    c.beginPath();
                    line.forEach((spot, i) => i ? c.lineTo(spot.x * width, spot.y * width) : c.moveTo(spot.x * width, spot.y * width));
                    if (line.length === 1)
                        c.lineTo(line[0].x * width + 0.5, line[0].y * width);
                    c.stroke();
                }
            }
        }
        MouseArea {
            anchors.fill: parent
            preventStealing: true // the page must not scroll away under a name
            onPressed: mouse => root.begin(mouse.x, mouse.y)
            onPositionChanged: mouse => root.go(mouse.x, mouse.y)
        }
    }
    RowLayout {
        spacing: Tone.gap
        Layout.fillWidth: true
        ActButton { text: qsTr("Signed", "end of signing"); size: Tone.body; enabled: root.strokes.length > 0; Layout.fillWidth: true; onClicked: root.signedNow(root.strokes) }
        WordButton { text: qsTr("begin again", "signing"); enabled: root.strokes.length > 0; Layout.fillWidth: true; onClicked: root.strokes = [] }
        WordButton { text: qsTr("not now", "signing"); Layout.fillWidth: true; onClicked: root.gaveUp() }
    }
}
