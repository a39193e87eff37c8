// SPDX-License-Identifier: Apache-2.0
// Where the figures stand on a tire's sidewall: the upper half of a tire of no maker. That size, load,
// pressure and a date code stand there: 49 CFR 571.139 and 574.5, UN Regulation 54 (all from memory).
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Canvas {
    id: root

    property bool us: false

    readonly property var look: [root.us, Tone.theme, Tone.textScale, root.width]
    readonly property real size: Tone.px(14)
    readonly property real radius: Math.min(root.width / 2 - 4, root.size * 15)
    readonly property real ring: root.size * 3.6
    onLookChanged: root.requestPaint()

    implicitHeight: root.radius * 0.86 + 10
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("picture of a tire's sidewall: 1 size, 2 largest load and pressure, 3 date code")

    // Letters along a circle about (x, y), their middle at `middle` radians from straight up.
    function around(c: var, text: string, radius: real, middle: real, x: real, y: real) {
        let at = middle - c.measureText(text).width / radius / 2;
        for (const letter of text) {
            const step = c.measureText(letter).width / radius;
            c.save(); c.translate(x, y); c.rotate(at + step / 2); c.fillText(letter, 0, -radius); c.restore();
            at += step;
        }
    }
    function balloon(c: var, number: string, middle: real, x: real, y: real) {
        const r = root.radius - root.ring - root.size * 1.3, bx = x + Math.sin(middle) * r, by = y - Math.cos(middle) * r;
        c.beginPath(); c.arc(bx, by, root.size * 0.85, 0, 7); c.stroke();
        c.beginPath(); c.moveTo(bx + Math.sin(middle) * root.size * 0.85, by - Math.cos(middle) * root.size * 0.85); c.lineTo(x + Math.sin(middle) * (r + root.size * 1.9), y - Math.cos(middle) * (r + root.size * 1.9)); c.stroke();
        c.font = root.size + "px '" + Tone.digits + "'"; c.fillText(number, bx, by);
    }

    onPaint: {
        const c = root.getContext("2d"), s = root.size, x = root.width / 2, y = root.radius + 6, R = root.radius;
        c.reset();
        c.textAlign = "center"; c.textBaseline = "middle"; c.strokeStyle = Tone.ink;
        c.fillStyle = Tone.band; c.lineWidth = Tone.stroke;
        c.beginPath(); c.arc(x, y, R, Math.PI, 0, false); c.arc(x, y, R - root.ring, 0, Math.PI, true); c.closePath(); c.fill(); c.stroke();
        c.lineWidth = Tone.hair;
        for (let a = -1.5; a <= 1.5; a += 0.06) { // tread blocks seen from the side
            c.beginPath(); c.moveTo(x + Math.sin(a) * R, y - Math.cos(a) * R); c.lineTo(x + Math.sin(a) * (R - s * 0.4), y - Math.cos(a) * (R - s * 0.4)); c.stroke();
        }
        c.fillStyle = Tone.ink;
        c.font = "bold " + Math.round(s * 1.25) + "px '" + Tone.words + "'";
        root.around(c, "205/75 R14 105 D", R - s * 1.9, 0, x, y);
        c.font = Math.round(s * 0.82) + "px '" + Tone.words + "'";
        root.around(c, root.us ? "MAX LOAD 2040 LB" : "MAX LOAD 925 KG", R - s * 1.5, -0.98, x, y);
        root.around(c, root.us ? "AT 65 PSI COLD" : "AT 450 KPA COLD", R - s * 2.6, -0.98, x, y);
        root.around(c, "DOT ···· ···· 2326", R - s * 2, 0.98, x, y);
        root.balloon(c, "1", 0, x, y); root.balloon(c, "2", -0.98, x, y); root.balloon(c, "3", 0.98, x, y);
    }
}
