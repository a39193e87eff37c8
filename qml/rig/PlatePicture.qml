// SPDX-License-Identifier: Apache-2.0
// Where the figures stand on a placard: a plate of no maker, with numbered balloons.
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Canvas {
    id: root

    property bool us: false

    readonly property var look: [root.us, Tone.theme, Tone.textScale, root.width]
    readonly property real size: Tone.px(15)
    readonly property var rows: root.us ? [["GROSS", "7,500 lb", "2"], ["AXLES", "2 × 3,500 lb", ""], ["TIRES", "205/75 R14 105", ""], ["COLD", "65 psi", "1"]]
        : [["GROSS", "2500 kg", "2"], ["AXLES", "2 × 1300 kg", ""], ["TIRES", "205/75 R14 105", ""], ["COLD", "450 kPa", "1"]]
    onLookChanged: root.requestPaint()

    implicitHeight: root.size * 1.6 * root.rows.length + 26
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("picture of a placard: mass, axles, tires, pressure when cold")

    onPaint: {
        const c = root.getContext("2d"), s = root.size, wide = Math.min(root.width - s * 3, s * 20), high = root.height - 6;
        c.reset();
        c.lineWidth = Tone.stroke; c.strokeStyle = Tone.ink; c.fillStyle = Tone.band;
        c.beginPath(); c.roundedRect(2, 3, wide, high, 8, 8); c.fill(); c.stroke();
        c.lineWidth = Tone.hair;
        [[12, 13], [wide - 8, 13], [12, high - 7], [wide - 8, high - 7]].forEach(p => { c.beginPath(); c.arc(p[0], p[1], 3, 0, 7); c.stroke(); });
        c.fillStyle = Tone.ink; c.textBaseline = "middle";
        root.rows.forEach((row, i) => {
            const y = 16 + s * 1.6 * (i + 0.5) - 3;
            c.font = Math.round(s * 0.8) + "px '" + Tone.words + "'"; c.fillText(row[0], s * 1.6, y);
            c.font = "bold " + s + "px '" + Tone.words + "'"; c.fillText(row[1], s * 6.2, y);
            if (row[2] === "")
                return;
            const x = wide + s * 1.6;
            c.beginPath(); c.moveTo(s * 6.4 + c.measureText(row[1]).width, y); c.lineTo(x - s * 0.8, y); c.stroke();
            c.beginPath(); c.arc(x, y, s * 0.8, 0, 7); c.stroke();
            c.font = Math.round(s * 0.9) + "px '" + Tone.digits + "'"; c.textAlign = "center"; c.fillText(row[2], x, y); c.textAlign = "left";
        });
    }
}
