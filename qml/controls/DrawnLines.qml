// SPDX-License-Identifier: Apache-2.0
// Circles, arrows and rulers over a picture: dark with a light edge, so that they show on any photo.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style

Canvas {
    id: root

    /// {kind, x1, y1, x2, y2, text} in shares of this item.
    required property var shapes
    /// One that is still being made, or null.
    property var draft: null
    /// Whether rulers carry their length; on a small picture there is no room for it.
    property bool told: root.width > Tone.px(220)

    readonly property var all: root.draft ? [...root.shapes, root.draft] : root.shapes
    readonly property var look: [root.all, root.width, root.height]
    readonly property real line: root.width > 200 ? 3 : 2

    function nameOf(shape: var): string {
        return shape.kind === "circle" ? qsTr("circle", "drawn on a photo") : shape.kind === "arrow" ? qsTr("arrow", "drawn on a photo")
            : shape.text ? qsTr("ruler, %1", "drawn on a photo, length").arg(shape.text) : qsTr("ruler", "drawn on a photo");
    }
    function trace(c: var, shape: var) {
        const w = root.width, h = root.height, a = { x: shape.x1 * w, y: shape.y1 * h }, b = { x: shape.x2 * w, y: shape.y2 * h };
        const run = Math.hypot(b.x - a.x, b.y - a.y), turn = Math.atan2(b.y - a.y, b.x - a.x), barb = Math.min(run * 0.4, 6 * root.line);
        const ray = (from, way, far) => { c.moveTo(from.x, from.y); c.lineTo(from.x + Math.cos(way) * far, from.y + Math.sin(way) * far) };
        c.beginPath();
        if (shape.kind === "circle") {
            c.arc(a.x, a.y, Math.max(run, root.line), 0, 7);
        } else {
            c.moveTo(a.x, a.y); c.lineTo(b.x, b.y);
            if (shape.kind === "arrow")
                [-0.5, 0.5].forEach(k => ray(b, turn + Math.PI + k, barb));
            else
                [a, b].forEach(end => [-1, 1].forEach(k => ray(end, turn + k * Math.PI / 2, 3 * root.line)));
        }
        c.stroke();
    }

    onLookChanged: root.requestPaint()
    Accessible.role: Accessible.Graphic
    Accessible.name: root.all.map(root.nameOf).join(", ")
    Accessible.ignored: root.all.length === 0

    onPaint: {
        const c = root.getContext("2d");
        c.reset();
        c.lineCap = "round"; c.lineJoin = "round";
        for (const [ink, width] of [["#FFFFFF", root.line + 3], ["#1B1F23", root.line]]) {
            c.strokeStyle = ink; c.lineWidth = width;
            root.all.forEach(shape => root.trace(c, shape));
        }
    }
    Repeater {
        model: root.told ? root.all.filter(one => one.text) : []
        Rectangle {
            id: label
            required property var modelData
            readonly property real across: (modelData.x1 + modelData.x2) / 2 * root.width
            readonly property real down: (modelData.y1 + modelData.y2) / 2 * root.height
            x: Math.max(0, Math.min(root.width - width, across - width / 2))
            y: Math.max(0, Math.min(root.height - height, down + 10))
            width: words.implicitWidth + 12
            height: words.implicitHeight + 4
            radius: 3
            color: "#FFFFFF"
            border.width: 1
            border.color: "#1B1F23"
            BodyText { id: words; anchors.centerIn: parent; text: label.modelData.text; level: "small"; wrapMode: Text.NoWrap; color: "#1B1F23"; Accessible.ignored: true }
        }
    }
}
