// SPDX-License-Identifier: Apache-2.0
// The section of a bead on its joint, to scale, with its width and height written along the sides.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    /// {shape, aspect, widthText, heightText, lengthText, spoken}; see bench_pictures.hpp.
    required property var picture

    readonly property real aspect: Math.max(0.02, Math.min(50, root.picture.aspect ?? 1))
    readonly property real roomAcross: Math.max(40, Math.min(Tone.px(260), root.width - 2 * high.width - 64))
    readonly property real roomUp: Tone.px(130)
    readonly property real wide: Math.max(10, Math.min(root.roomAcross, root.roomUp / root.aspect))
    readonly property real tall: Math.max(6, root.wide * root.aspect)
    readonly property real lead: Math.round((root.width - root.wide) / 2)
    readonly property real base: 12 + Math.round(root.tall)
    readonly property bool corner: root.picture.shape === "fillet"

    implicitHeight: root.base + 34 + across.height + 6 + along.height
    Accessible.role: Accessible.Graphic
    Accessible.name: root.picture.spoken ?? ""

    Canvas {
        id: sheet
        width: root.width
        height: root.base + 34
        readonly property var look: [root.picture, Tone.theme, root.width, root.wide, root.tall]
        onLookChanged: requestPaint()

        function outline(c: var, x: real, y: real, w: real, h: real) {
            c.beginPath();
            switch (root.picture.shape) {
            case "round": c.arc(x + w / 2, y - h / 2, w / 2, 0, 7); break;
            case "half_round": case "half_ellipse": case "half-round": case "half-ellipse":
                c.moveTo(x, y);
                for (let i = 0; i <= 48; ++i)
                    c.lineTo(x + w / 2 - Math.cos(i / 48 * Math.PI) * w / 2, y - Math.sin(i / 48 * Math.PI) * h);
                break;
            case "fillet": c.moveTo(x, y); c.lineTo(x + w, y); c.lineTo(x, y - h); break;
            default: c.rect(x, y - h, w, h);
            }
            c.closePath();
        }

        onPaint: {
            const c = sheet.getContext("2d"), x = root.lead, y = root.base, w = root.wide, h = root.tall;
            c.reset();
            c.lineJoin = "miter";
            // what it lies on
            c.fillStyle = Tone.band; c.strokeStyle = Tone.quiet; c.lineWidth = Tone.hair;
            c.fillRect(x - 26, y, w + 52, 10); c.strokeRect(x - 26, y, w + 52, 10);
            if (root.corner) { c.fillRect(x - 10, y - h - 10, 10, h + 10); c.strokeRect(x - 10, y - h - 10, 10, h + 10) }
            sheet.outline(c, x, y, w, h);
            c.fillStyle = Tone.line; c.fill();
            c.strokeStyle = Tone.ink; c.lineWidth = Tone.stroke + 1; c.stroke();
            // measures, with a short upright at each end
            c.lineWidth = Tone.stroke; c.beginPath();
            c.moveTo(x, y + 24); c.lineTo(x + w, y + 24); c.moveTo(x, y + 18); c.lineTo(x, y + 30); c.moveTo(x + w, y + 18); c.lineTo(x + w, y + 30);
            if (high.text !== "") { c.moveTo(x + w + 16, y); c.lineTo(x + w + 16, y - h); c.moveTo(x + w + 10, y); c.lineTo(x + w + 22, y); c.moveTo(x + w + 10, y - h); c.lineTo(x + w + 22, y - h) }
            c.stroke();
        }
    }
    BodyText { id: high; x: root.lead + root.wide + 28; y: Math.max(0, root.base - root.tall / 2 - height / 2); text: root.picture.heightText ?? ""; wrapMode: Text.NoWrap; Accessible.ignored: true }
    BodyText { id: across; x: Math.max(0, Math.min(root.width - width, root.lead + root.wide / 2 - width / 2)); y: root.base + 32; text: root.picture.widthText ?? ""; wrapMode: Text.NoWrap; Accessible.ignored: true }
    BodyText { id: along; width: root.width; y: across.y + across.height + 4; text: qsTr("section, to scale; the joint is %1 long").arg(root.picture.lengthText ?? ""); level: "small"; quiet: true; horizontalAlignment: Text.AlignHCenter; Accessible.ignored: true }
}
