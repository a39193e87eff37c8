// SPDX-License-Identifier: Apache-2.0
// The line a trip took, north up, without a map: only its shape, its start and its end.
import QtQuick
import Snugwalk.Style

Canvas {
    id: root

    /// {lat, lon} in degrees.
    required property var points

    readonly property var look: [root.points, Tone.theme]
    onLookChanged: root.requestPaint()
    implicitWidth: 96
    implicitHeight: 72
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("sketch of the track")

    onPaint: {
        const c = root.getContext("2d"), pts = root.points ?? [];
        c.reset();
        if (pts.length < 2)
            return;
        const lats = pts.map(p => p.lat), lons = pts.map(p => p.lon), n = Math.max(...lats), s = Math.min(...lats), w = Math.min(...lons), e = Math.max(...lons);
        // a degree of longitude is shorter by the cosine of the latitude
        const squeeze = Math.cos((n + s) / 2 * Math.PI / 180), wide = Math.max(1e-9, (e - w) * squeeze), high = Math.max(1e-9, n - s);
        const k = Math.min((root.width - 16) / wide, (root.height - 16) / high);
        const x = p => (root.width - wide * k) / 2 + (p.lon - w) * squeeze * k, y = p => (root.height - high * k) / 2 + (n - p.lat) * k;
        c.strokeStyle = Tone.ink; c.lineWidth = Tone.stroke; c.lineJoin = "round"; c.beginPath();
        pts.forEach((p, i) => i ? c.lineTo(x(p), y(p)) : c.moveTo(x(p), y(p)));
        c.stroke();
        const last = pts[pts.length - 1];
        c.fillStyle = Tone.paper; c.beginPath(); c.arc(x(pts[0]), y(pts[0]), 4, 0, 7); c.fill(); c.stroke();
        c.fillStyle = Tone.ink; c.beginPath(); c.arc(x(last), y(last), 4, 0, 7); c.fill();
    }
}
