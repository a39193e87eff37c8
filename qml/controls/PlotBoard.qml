// SPDX-License-Identifier: Apache-2.0
// A plot as the core laid it out: lines and shapes by a pen, words as text. A press or an arrow key goes along its rows.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style

FocusScope {
    id: root

    /// See plot_picture.hpp; {} for nothing to draw.
    required property var picture
    /// What it shows, for who does not see it.
    required property string spoken
    /// The row looked at, from 0; -1 for none.
    property int row: -1
    /// Its numbers in words, "" for none.
    property string told: ""
    signal moved(int row)

    /// The width to lay a picture out for: told after the page has laid itself out, for a picture's height is asked for
    /// by that same page.
    property real wide: 0
    function settle() { root.wide = root.width }

    readonly property var xs: root.picture.xs ?? []
    readonly property bool drawn: (root.picture.inks ?? []).length > 0
    readonly property color paper: Tone.paper
    readonly property var look: [root.picture, Tone.theme, root.width]
    readonly property var inkOf: ({ ink: Tone.ink, quiet: Tone.quiet, faint: Qt.rgba(Tone.quiet.r, Tone.quiet.g, Tone.quiet.b, Tone.sun ? 0.45 : 0.35), shade: Qt.rgba(Tone.quiet.r, Tone.quiet.g, Tone.quiet.b, 0.2), paper: Tone.paper, watch: Tone.watch, mend: Tone.mend, hold: Tone.hold })

    function step(by: int) {
        if (root.xs.length > 0)
            root.moved(root.row < 0 ? (by > 0 ? 0 : root.xs.length - 1) : Math.max(0, Math.min(root.xs.length - 1, root.row + by)));
    }
    function nearest(x: real): int {
        return root.xs.reduce((best, one, at) => best < 0 || Math.abs(one - x) < Math.abs(root.xs[best] - x) ? at : best, -1);
    }
    function trace(c: var, xy: var) {
        c.beginPath();
        for (let i = 0; i + 1 < xy.length; i += 2)
            i === 0 ? c.moveTo(xy[0], xy[1]) : c.lineTo(xy[i], xy[i + 1]);
    }
    function outline(c: var, fill: color) {
        c.fillStyle = fill;
        c.fill();
        c.strokeStyle = Tone.ink;
        c.lineWidth = Tone.stroke * 0.8;
        c.setLineDash([]);
        c.stroke();
    }
    function shape(c: var, one: var) {
        const x = one.xy[0], y = one.xy[1], r = one.size / 2;
        c.beginPath();
        switch (one.shape) {
        case "half":
            c.arc(x, y + r / 2, r, Math.PI, 0);
            c.closePath();
            return root.outline(c, Tone.watch);
        case "wedge":
            root.trace(c, [x - r, y + r * 0.8, x + r, y - r * 0.8, x + r, y + r * 0.8]);
            c.closePath();
            return root.outline(c, Tone.mend);
        case "block":
            c.rect(x - r, y - r, 2 * r, 2 * r);
            root.outline(c, Tone.hold);
            c.fillStyle = Tone.paper;
            c.fillRect(x - r, y - r * 0.22, 2 * r, r * 0.44);
            return;
        case "square":
            c.rect(x - r, y - r, 2 * r, 2 * r);
            return root.outline(c, Tone.paper);
        default:
            c.arc(x, y, r, 0, 2 * Math.PI);
            root.outline(c, one.shape === "ring" ? Tone.paper : Tone.ink);
        }
    }

    implicitHeight: root.picture.height ?? 0
    activeFocusOnTab: root.drawn
    Accessible.role: root.xs.length > 0 ? Accessible.Slider : Accessible.Graphic
    Accessible.name: root.told === "" ? root.spoken : qsTr("%1. %2", "plot, row").arg(root.spoken).arg(root.told)
    Accessible.focusable: root.drawn
    Accessible.onIncreaseAction: root.step(1)
    Accessible.onDecreaseAction: root.step(-1)
    Keys.onLeftPressed: root.step(-1)
    Keys.onRightPressed: root.step(1)

    FocusEdge { around: root; shown: root.activeFocus }
    TapHandler { onTapped: point => { root.forceActiveFocus(); root.moved(root.nearest(point.position.x)) } }

    onWidthChanged: Qt.callLater(root.settle) // qmllint disable
    onLookChanged: pen.requestPaint()
    Canvas {
        id: pen
        anchors.fill: parent
        onPaint: {
            const c = pen.getContext("2d");
            c.reset();
            c.lineJoin = "round";
            for (const one of root.picture.inks ?? []) {
                if (one.kind === "shape") {
                    root.shape(c, one);
                    continue;
                }
                root.trace(c, one.xy);
                if (one.kind === "area") {
                    c.closePath();
                    c.fillStyle = root.inkOf[one.tone];
                    c.fill();
                } else {
                    c.strokeStyle = root.inkOf[one.tone];
                    c.lineWidth = one.width;
                    c.setLineDash(one.dash);
                    c.stroke();
                }
            }
        }
    }
    // where the row looked at stands
    Rectangle {
        visible: root.row >= 0 && root.row < root.xs.length
        x: visible ? Math.round(root.xs[root.row] - width / 2) : 0
        y: root.picture.top ?? 0
        width: Tone.stroke
        height: (root.picture.up ?? 0) + 6
        color: Tone.ink
    }
    Repeater {
        model: root.picture.words ?? []
        Rectangle {
            id: label
            required property var modelData
            x: modelData.x - (modelData.bold ? 2 : 0)
            y: modelData.y
            width: word.width + (modelData.bold ? 4 : 0)
            height: root.picture.lineHeight
            color: modelData.bold ? root.paper : "transparent"
            BodyText {
                id: word
                x: label.modelData.bold ? 2 : 0
                anchors.verticalCenter: parent.verticalCenter
                text: label.modelData.text
                level: "small"
                quiet: label.modelData.quiet
                font.bold: label.modelData.bold
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }
}
