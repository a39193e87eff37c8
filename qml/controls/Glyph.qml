// SPDX-License-Identifier: Apache-2.0
// A state told by its shape first: wheel, half disc, chock, barred square, dashed ring, dash, gap.
import QtQuick
import Snugwalk.Style

Canvas {
    id: root

    /// "pass", "watch", "mend", "hold", "could_not_look", "not_fitted"; "attention" only until its call
    /// is known; all else is a gap.
    required property string kind
    property real size: Tone.px(24)
    property color ink: Tone.ink

    readonly property string shape: root.shapeOf[root.kind] ?? "gap"
    readonly property var shapeOf: ({ pass: "wheel", watch: "half disc", mend: "chock", hold: "barred square",
        could_not_look: "dashed ring", not_fitted: "dash",
        attention: "diamond" })
    readonly property string words: root.wordsOf[root.kind] ?? qsTr("not yet looked at", "state of a point")
    readonly property var wordsOf: ({ pass: qsTr("pass", "state of a point"), watch: qsTr("watch", "call"),
        mend: qsTr("mend soon", "call"), hold: qsTr("hold", "call"),
        could_not_look: qsTr("could not look", "state of a point"), not_fitted: qsTr("not fitted", "state of a point"),
        attention: qsTr("attention", "state of a point") })
    readonly property var look: [root.kind, root.ink, Tone.theme, root.size]

    implicitWidth: root.size
    implicitHeight: root.size
    onLookChanged: root.requestPaint()

    Accessible.role: Accessible.Graphic
    Accessible.name: root.words

    onPaint: {
        const c = root.getContext("2d"), w = root.width, h = root.height, m = w * 0.1, line = Math.max(1.6, w * 0.075) * Tone.stroke / 2;
        c.reset();
        c.lineJoin = "round"; c.lineWidth = line; c.strokeStyle = root.ink;
        c.beginPath();
        switch (root.shape) {
        case "wheel":
            c.arc(w / 2, h / 2, w / 2 - m, 0, 7); c.stroke();
            c.fillStyle = root.ink; c.beginPath(); c.arc(w / 2, h / 2, w * 0.14, 0, 7); c.fill();
            break;
        case "half disc":
            c.fillStyle = Tone.watch; c.arc(w / 2, h * 0.7, w / 2 - m, Math.PI, 0); c.closePath(); c.fill(); c.stroke();
            break;
        case "chock":
            c.fillStyle = Tone.mend; c.moveTo(m, h * 0.82); c.lineTo(w - m, h * 0.82); c.lineTo(w - m, h * 0.22); c.closePath(); c.fill(); c.stroke();
            break;
        case "barred square":
            c.fillStyle = Tone.hold; c.fillRect(m, m, w - 2 * m, h - 2 * m); c.strokeRect(m, m, w - 2 * m, h - 2 * m);
            c.fillStyle = Tone.paper; c.fillRect(m + line / 2, h * 0.41, w - 2 * m - line, h * 0.18);
            break;
        case "dashed ring":
            c.strokeStyle = Tone.unseen; c.setLineDash([2.2, 1.7]); c.arc(w / 2, h / 2, w / 2 - m, 0, 7); c.stroke();
            break;
        case "diamond":
            c.moveTo(w / 2, m); c.lineTo(w - m, h / 2); c.lineTo(w / 2, h - m); c.lineTo(m, h / 2); c.closePath(); c.stroke();
            break;
        case "dash":
            c.strokeStyle = Tone.unseen; c.moveTo(w * 0.28, h / 2); c.lineTo(w * 0.72, h / 2); c.stroke();
            break;
        }
    }
}
