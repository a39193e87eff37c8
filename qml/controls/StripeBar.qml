// SPDX-License-Identifier: Apache-2.0
// The symbol of a caution: a slanted-stripe edge, as on a barrier.
import QtQuick
import Snugwalk.Style

Canvas {
    id: root

    readonly property string look: Tone.theme
    onLookChanged: root.requestPaint()
    implicitWidth: 14
    Accessible.ignored: true

    onPaint: {
        const c = root.getContext("2d");
        c.reset();
        c.fillStyle = Tone.sun ? "#FFFFFF" : "#E69F00"; c.fillRect(0, 0, root.width, root.height);
        c.fillStyle = "#1B1F23";
        for (let y = -root.width; y < root.height + root.width; y += 18) {
            c.beginPath(); c.moveTo(0, y + 9 + root.width); c.lineTo(root.width, y + 9); c.lineTo(root.width, y); c.lineTo(0, y + root.width); c.closePath(); c.fill();
        }
    }
}
