// SPDX-License-Identifier: Apache-2.0
// A place where something was found: the head of a nut with how often in it; its edge is dashed where nothing
// is open there.
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Canvas {
    id: root

    required property int times
    required property bool open
    /// Larger where it was found more often, up to five times.
    property real size: Tone.px(20 + 3 * Math.min(5, root.times))

    readonly property var look: [root.open, root.size, Tone.theme]

    width: root.size
    height: root.size
    implicitWidth: root.size
    implicitHeight: root.size
    onLookChanged: root.requestPaint()
    Accessible.ignored: true

    onPaint: {
        const c = root.getContext("2d"), r = root.size / 2, m = r - 1.5 - Tone.stroke / 2;
        c.reset();
        c.fillStyle = Tone.paper; c.strokeStyle = Tone.ink; c.lineJoin = "round";
        c.lineWidth = root.open ? Tone.stroke : Tone.stroke / 2 + 0.5;
        if (!root.open)
            c.setLineDash([2.5, 2]);
        c.beginPath();
        for (let k = 0; k < 6; ++k) {
            const x = r + m * Math.cos(k * Math.PI / 3), y = r + m * Math.sin(k * Math.PI / 3);
            if (k) c.lineTo(x, y); else c.moveTo(x, y);
        }
        c.closePath(); c.fill(); c.stroke();
    }
    Digits { anchors.centerIn: parent; text: root.times; size: Tone.px(13); Accessible.ignored: true }
}
