// SPDX-License-Identifier: Apache-2.0
// Car and trailer on the scale from the side: a pad an axle, the masses typed under each, the answer at the
// coupling.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    /// {pads: [{name, solo, coupled, bars}], figure, value, spoken}; see bench_pictures.hpp.
    required property var picture

    readonly property real wide: root.width
    /// Large words stand one under the other.
    readonly property bool stacked: root.width < Tone.px(290)
    readonly property real rise: Math.min(Tone.px(120), root.wide * 0.34)
    readonly property real ground: head.height + root.rise
    /// Shares of the width at which the axles stand.
    readonly property var axles: [0.13, 0.40, 0.76]
    readonly property real coupling: 0.52
    /// From and to where each pad reaches.
    readonly property var spans: [[0.03, 0.23], [0.30, 0.50], [0.60, 0.92]]

    implicitHeight: root.ground + 16 + pads.height
    Accessible.role: Accessible.Graphic
    Accessible.name: root.picture.spoken ?? ""

    Column {
        id: head
        width: root.width
        bottomPadding: 4
        BodyText { visible: root.picture.value !== ""; width: parent.width; text: root.picture.figure; level: "small"; quiet: true; horizontalAlignment: Text.AlignHCenter; Accessible.ignored: true }
        BodyText { visible: text !== ""; width: parent.width; text: root.picture.value; level: "head"; horizontalAlignment: Text.AlignHCenter; Accessible.ignored: true }
    }
    Canvas {
        id: sheet
        y: head.height
        width: root.width
        height: root.rise + 14
        readonly property var look: [Tone.theme, root.width, root.rise]
        onLookChanged: requestPaint()

        onPaint: {
            const c = sheet.getContext("2d"), w = root.wide, g = root.rise, r = Math.max(8, w * 0.042), sill = g - r * 1.35;
            c.reset();
            c.lineJoin = "round"; c.lineCap = "round";
            c.lineWidth = Tone.stroke; c.strokeStyle = Tone.ink; c.fillStyle = Tone.band;
            // the car: bonnet, cab, bed
            c.beginPath(); c.moveTo(w * 0.02, sill); c.lineTo(w * 0.02, sill - g * 0.25); c.lineTo(w * 0.14, sill - g * 0.30);
            c.lineTo(w * 0.19, sill - g * 0.52); c.lineTo(w * 0.33, sill - g * 0.52); c.lineTo(w * 0.36, sill - g * 0.28); c.lineTo(w * 0.49, sill - g * 0.28);
            c.lineTo(w * 0.49, sill); c.closePath(); c.fill(); c.stroke();
            // drawbar, then the body
            c.beginPath(); c.moveTo(w * root.coupling, sill); c.lineTo(w * 0.60, sill); c.stroke();
            c.fillRect(w * 0.60, g * 0.06, w * 0.38, sill - g * 0.06); c.strokeRect(w * 0.60, g * 0.06, w * 0.38, sill - g * 0.06);
            c.beginPath(); c.arc(w * root.coupling, sill, Math.max(4, w * 0.013), 0, 7); c.fillStyle = Tone.ink; c.fill();
            // what the coupling carries
            c.beginPath(); c.moveTo(w * root.coupling, 0); c.lineTo(w * root.coupling, sill - 10); c.stroke();
            c.beginPath(); c.moveTo(w * root.coupling - 6, sill - 20); c.lineTo(w * root.coupling, sill - 9); c.lineTo(w * root.coupling + 6, sill - 20); c.closePath(); c.fill();
            for (const at of [root.axles[0], root.axles[1], root.axles[2] - 0.055, root.axles[2] + 0.055]) {
                c.beginPath(); c.arc(w * at, g - r, r, 0, 7); c.fillStyle = Tone.paper; c.fill(); c.lineWidth = Tone.stroke + 1; c.stroke();
                c.beginPath(); c.arc(w * at, g - r, r * 0.3, 0, 7); c.fillStyle = Tone.ink; c.fill();
            }
            c.lineWidth = Tone.stroke;
            // pads
            for (const span of root.spans) {
                c.fillStyle = Tone.paper; c.fillRect(w * span[0], g + 1, w * (span[1] - span[0]), 9); c.strokeRect(w * span[0], g + 1, w * (span[1] - span[0]), 9);
            }
        }
    }
    Item {
        id: pads
        y: root.ground + 16
        height: childrenRect.height
        Repeater {
            model: root.picture.pads
            Column {
                id: pad
                required property var modelData
                required property int index
                x: root.stacked ? 0 : root.wide * root.spans[pad.index][0]
                y: root.stacked && pad.index > 0 ? pads.children[pad.index - 1].y + pads.children[pad.index - 1].height + 8 : 0
                width: root.stacked ? root.wide : root.wide * [0.26, 0.29, 0.40][pad.index]
                spacing: 1
                BodyText { width: parent.width - 8; text: pad.modelData.name; level: "small"; quiet: true; Accessible.ignored: true }
                Mass { text: pad.modelData.coupled; of: qsTr("coupled", "on the scale"); strong: true }
                Mass { visible: pad.modelData.bars !== ""; text: pad.modelData.bars; of: qsTr("with bars", "on the scale") }
                Mass { visible: pad.index < 2; text: pad.modelData.solo; of: qsTr("alone", "on the scale") }
            }
        }
    }

    component Mass: Column {
        id: mass
        property string text
        property string of
        property bool strong: false
        width: parent.width - 8
        BodyText { width: mass.width; text: mass.text === "" ? "–" : mass.text; font.bold: mass.strong; Accessible.ignored: true }
        BodyText { width: mass.width; text: mass.of; level: "small"; quiet: true; Accessible.ignored: true }
    }
}
