// SPDX-License-Identifier: Apache-2.0
// A trip on the outline of the land: coast, degrees, a scale, the line it took, its start, stops and end.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    /// See trip_map.hpp; lengths in kilometres.
    required property var map

    readonly property real perKm: root.width / (root.map.width ?? 1)

    implicitHeight: Math.round(root.width * (root.map.height ?? 0) / (root.map.width ?? 1))
    clip: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.map.spoken ?? ""

    Canvas {
        id: sheet
        anchors.fill: parent
        readonly property var look: [root.map, Tone.theme, root.width, root.height]
        onLookChanged: requestPaint()

        function trace(c: var, flat: var, k: real, closed: bool) {
            c.moveTo(flat[0] * k, flat[1] * k);
            for (let i = 2; i + 1 < flat.length; i += 2)
                c.lineTo(flat[i] * k, flat[i + 1] * k);
            if (closed)
                c.closePath();
        }
        function spot(c: var, x: real, y: real, size: real, fill: color) {
            c.beginPath(); c.arc(x, y, size, 0, 7);
            c.fillStyle = fill; c.fill();
            c.lineWidth = Tone.stroke; c.strokeStyle = Tone.ink; c.stroke();
        }

        onPaint: {
            const c = sheet.getContext("2d"), map = root.map, k = root.perKm, w = root.width, h = root.height;
            c.reset();
            if (!map.track)
                return;
            c.fillStyle = Tone.paper; c.fillRect(0, 0, w, h);
            c.lineJoin = "round"; c.lineCap = "butt";
            if (map.sea) {
                c.fillStyle = Tone.band; c.fillRect(0, 0, w, h);
                c.beginPath();
                for (const ring of map.land)
                    sheet.trace(c, ring, k, true);
                c.fillRule = Qt.OddEvenFill;
                c.fillStyle = Tone.paper; c.fill();
                c.strokeStyle = Tone.quiet; c.lineWidth = Tone.stroke; c.stroke();
            }
            c.strokeStyle = Tone.line; c.lineWidth = Tone.hair; c.globalAlpha = Tone.sun ? 0.35 : 1; c.beginPath();
            for (const line of map.grid) {
                c.moveTo(line.meridian ? line.at * k : 0, line.meridian ? 0 : line.at * k);
                c.lineTo(line.meridian ? line.at * k : w, line.meridian ? h : line.at * k);
            }
            c.stroke();
            c.globalAlpha = 1;
            // paper beside the line keeps it apart from coast and grid
            c.lineCap = "round";
            c.beginPath(); sheet.trace(c, map.track, k, false);
            c.strokeStyle = Tone.paper; c.lineWidth = Tone.stroke + 5; c.stroke();
            if (map.dash.length) { c.lineCap = "butt"; c.setLineDash(map.dash) }
            c.beginPath(); sheet.trace(c, map.track, k, false);
            c.strokeStyle = Tone.ink; c.lineWidth = Tone.stroke + 1; c.stroke();
            c.setLineDash([]);
            const t = map.track;
            for (const stop of map.stops)
                sheet.spot(c, stop.x * k, stop.y * k, 5, Tone.paper);
            sheet.spot(c, t[0] * k, t[1] * k, 7, Tone.paper);
            sheet.spot(c, t[t.length - 2] * k, t[t.length - 1] * k, 7, Tone.ink);
        }
    }
    Repeater {
        model: root.map.grid ?? []
        BodyText {
            required property var modelData
            x: modelData.meridian ? Math.min(modelData.at * root.perKm + 3, root.width - width - 3) : 3
            y: modelData.meridian ? 2 : Math.min(modelData.at * root.perKm + 1, root.height - height)
            visible: modelData.meridian || modelData.at * root.perKm > height * 1.5 && modelData.at * root.perKm < bar.y - height
            text: modelData.text
            level: "small"
            quiet: true
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    Repeater {
        model: root.map.stops ?? []
        Digits {
            required property var modelData
            required property int index
            x: Math.min(modelData.x * root.perKm + 8, root.width - width - 2)
            y: Math.max(0, modelData.y * root.perKm - height)
            text: index + 1
            Accessible.ignored: true
        }
    }
    Rectangle {
        id: bar
        readonly property real reach: (root.map.scale?.length ?? 0) * root.perKm
        visible: bar.reach > 0
        x: 6
        y: root.height - height - 6
        width: Math.max(bar.reach, scaleText.width) + 12
        height: scaleText.height + 10
        color: Tone.paper
        opacity: 0.92
        BodyText { id: scaleText; x: 6; y: 1; text: root.map.scale?.text ?? ""; level: "small"; wrapMode: Text.NoWrap; Accessible.ignored: true }
        Rectangle { x: 6; y: parent.height - 6; width: bar.reach; height: Tone.stroke; color: Tone.ink }
        Rectangle { x: 6; y: parent.height - 10; width: Tone.stroke; height: 6; color: Tone.ink }
        Rectangle { x: 6 + bar.reach - width; y: parent.height - 10; width: Tone.stroke; height: 6; color: Tone.ink }
    }
    Rectangle { anchors.fill: parent; color: "transparent"; border.width: Tone.hair; border.color: Tone.line }
}
