// SPDX-License-Identifier: Apache-2.0
// The lines of one face of the rig, drawn from its own measures. No picture of a make or model.
import QtQuick
import Snugwalk.Style
import "geometry.js" as Geometry

Canvas {
    id: root

    required property var rig
    required property string face
    required property var box
    required property bool noseLeft
    /// From `Geometry.standPlace`, or null.
    property var stand: null

    readonly property var look: [root.rig, root.face, root.box, root.noseLeft, root.stand, Tone.theme]
    onLookChanged: root.requestPaint()
    Accessible.ignored: true

    function at(x: real, y: real, z: real): var {
        return Geometry.project(root.face, root.rig, root.box, root.noseLeft, x, y, z);
    }
    function poly(c: var, spots: var, closed: bool) {
        c.beginPath();
        spots.forEach((p, i) => i ? c.lineTo(p.x, p.y) : c.moveTo(p.x, p.y));
        if (closed)
            c.closePath();
        c.stroke();
    }
    function ring(c: var, p: var, radius: real, filled: bool) {
        c.beginPath(); c.arc(p.x, p.y, radius, 0, 7);
        if (filled)
            c.fill();
        c.stroke();
    }
    // A body's corners in metres along and up; corners are rounded by `r` metres in turn.
    function rounded(c: var, spots: var) {
        const n = spots.length, mid = (a, b) => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
        c.beginPath();
        for (let i = 0; i < n; ++i) {
            const a = spots[i], from = mid(spots[(i + n - 1) % n], a), to = mid(a, spots[(i + 1) % n]);
            if (i === 0)
                c.moveTo(from.x, from.y);
            c.arcTo(a.x, a.y, to.x, to.y, a.r * root.box.scale);
            c.lineTo(to.x, to.y);
        }
        c.closePath();
    }
    // Side profile by kind, as [along 0..1, up 0..1, corner radius in metres] from the front foot.
    function profile(): var {
        switch (root.rig.kindSlug) {
        case "teardrop": return [[0, 0, 0.1], [0, 0.62, 0.9], [0.28, 1, 0.8], [0.62, 0.98, 1.2], [1, 0.1, 0.7], [1, 0, 0.1]];
        case "folding_trailer": return [[0, 0, 0.08], [0, 1, 0.15], [1, 1, 0.15], [1, 0, 0.08]];
        case "fifth_wheel": return [[0, 0.42, 0.1], [0.02, 1, 0.5], [1, 1, 0.12], [1, 0, 0.06], [0.27, 0, 0.08], [0.25, 0.42, 0.1]];
        case "truck_camper": return [[0, 0.5, 0.15], [0.02, 1, 0.4], [1, 1, 0.12], [1, 0, 0.06], [0.32, 0, 0.06], [0.32, 0.5, 0.08]];
        case "motorhome": return [[0, 0, 0.12], [0.01, 0.3, 0.25], [0.1, 0.42, 0.3], [0.16, 0.68, 0.2], [0.04, 0.76, 0.2], [0.06, 1, 0.45], [1, 1, 0.15], [1, 0, 0.08]];
        case "van": return [[0, 0, 0.12], [0, 0.36, 0.25], [0.16, 0.46, 0.4], [0.3, 1, 0.5], [1, 1, 0.18], [1, 0, 0.1]];
        default: return [[0.01, 0, 0.1], [-0.006, 0.5, 1.4], [0.035, 1, 0.55], [1, 1, 0.16], [1, 0, 0.06]];
        }
    }

    function body(): var {
        const g = root.rig;
        return root.profile().map(p => Object.assign(root.at(p[0] * g.bodyLength, 0, g.floorHeight + p[1] * g.bodyHeight), { r: p[2] }));
    }
    function drawSide(c: var) {
        const g = root.rig, f = g.floorHeight, s = root.box.scale, wheel = Math.min(0.36, Math.max(0.26, f * 0.62));
        c.lineWidth = Tone.hair; c.strokeStyle = Tone.quiet;
        root.poly(c, [root.at(0.1, 0, f - 0.07), root.at(g.bodyLength - 0.1, 0, f - 0.07)], false);
        c.lineWidth = Tone.stroke; c.strokeStyle = Tone.ink; c.fillStyle = Tone.paper;
        if (g.hitchLength > 0) {
            const level = Math.max(0.42, f * 0.8), eye = root.at(-g.hitchLength, 0, level);
            root.poly(c, [root.at(0.15, 0, f - 0.02), root.at(-0.1, 0, level), eye], false);
            root.ring(c, eye, 0.07 * s, true);
            root.poly(c, [root.at(-g.hitchLength * 0.72, 0, level + 0.3), root.at(-g.hitchLength * 0.72, 0, 0.2)], false);
            root.ring(c, root.at(-g.hitchLength * 0.72, 0, 0.11), 0.11 * s, true);
        }
        root.rounded(c, root.body()); c.fill(); c.stroke();
        g.axles.forEach(x => {
            const hub = root.at(x, 0, wheel);
            c.lineWidth = Tone.stroke; root.ring(c, hub, wheel * s, true);
            c.lineWidth = Tone.hair; root.ring(c, hub, wheel * 0.58 * s, false); root.ring(c, hub, wheel * 0.14 * s, false);
        });
    }
    function drawFlat(c: var) {
        const g = root.rig, w = g.bodyWidth / 2, L = g.bodyLength, nose = g.kindSlug === "travel_trailer" || g.kindSlug === "teardrop" ? 0.22 : 0.06;
        c.lineWidth = Tone.stroke; c.strokeStyle = Tone.ink; c.fillStyle = Tone.paper;
        if (g.hitchLength > 0) {
            root.poly(c, [root.at(0.1, -w * 0.66, 0), root.at(-g.hitchLength, 0, 0), root.at(0.1, w * 0.66, 0)], false);
            root.ring(c, root.at(-g.hitchLength, 0, 0), 0.07 * root.box.scale, true);
        }
        root.rounded(c, [[nose, -w, 0.5], [-0.02, -w * 0.4, 0.6], [-0.02, w * 0.4, 0.6], [nose, w, 0.5], [L, w, 0.14], [L, -w, 0.14]]
            .map(p => Object.assign(root.at(p[0], p[1], 0), { r: p[2] })));
        c.fill(); c.stroke();
        if (root.face !== "underside")
            return;
        c.lineWidth = Tone.hair; c.strokeStyle = Tone.quiet;
        [-0.62, 0.62].forEach(k => root.poly(c, [root.at(0.15, w * k, 0), root.at(L - 0.1, w * k, 0)], false));
        c.strokeStyle = Tone.ink;
        g.axles.forEach(x => {
            root.poly(c, [root.at(x, -w * 0.9, 0), root.at(x, w * 0.9, 0)], false);
            [-0.88, 0.88].forEach(k => root.slab(c, x, w * k, 0, 0.62, 0.2));
        });
    }
    function drawEnd(c: var) {
        const g = root.rig, w = g.bodyWidth / 2, f = g.floorHeight, h = g.bodyHeight, s = root.box.scale;
        c.lineWidth = Tone.stroke; c.strokeStyle = Tone.ink; c.fillStyle = Tone.paper;
        if (g.axles.length)
            [-0.84, 0.84].forEach(k => { const a = root.at(0, w * k - 0.1, 0.62), b = root.at(0, w * k + 0.1, 0); c.strokeRect(Math.min(a.x, b.x), a.y, Math.abs(b.x - a.x), b.y - a.y); });
        root.rounded(c, [[-w, f, 0.1], [-w, f + h, 0.24], [w, f + h, 0.24], [w, f, 0.1]].map(p => Object.assign(root.at(0, p[0], p[1]), { r: p[2] })));
        c.fill(); c.stroke();
        c.lineWidth = Tone.hair;
        if (root.face === "front" && g.hitchLength > 0)
            root.ring(c, root.at(0, 0, Math.max(0.42, f * 0.8)), 0.08 * s, true);
        if (root.face === "rear")
            [-0.84, 0.84].forEach(k => { const p = root.at(0, w * k, f + 0.3); c.strokeRect(p.x - 0.07 * s, p.y - 0.12 * s, 0.14 * s, 0.24 * s); });
    }
    // A rectangle of metres along and across round a spot, whatever way the face is turned.
    function slab(c: var, x: real, y: real, z: real, w: real, h: real) {
        const p = root.at(x, y, z), s = root.box.scale;
        c.fillRect(p.x - w * s / 2, p.y - h * s / 2, w * s, h * s);
        c.strokeRect(p.x - w * s / 2, p.y - h * s / 2, w * s, h * s);
    }
    function drawOpenings(c: var) {
        const s = root.box.scale, roof = root.rig.floorHeight + root.rig.bodyHeight, side = root.face === "left" || root.face === "right";
        c.lineWidth = Tone.hair + 0.5; c.strokeStyle = Tone.ink; c.fillStyle = Tone.paper;
        root.rig.openings.filter(o => o.face === root.face).forEach(o => {
            root.slab(c, o.x, o.y, o.z, o.w, o.h);
            if (o.kind === "window" || o.kind === "rooflight") {
                c.lineWidth = Tone.hair; root.slab(c, o.x, o.y, o.z, o.w - 0.12, o.h - 0.12); c.lineWidth = Tone.hair + 0.5;
            } else if (o.kind === "door")
                root.ring(c, root.at(o.x - o.w * 0.36, o.y, o.z - o.h * 0.06), 0.04 * s, false);
            else if (o.kind === "vent")
                root.poly(c, [root.at(o.x - o.w / 2, o.y - o.h / 2, o.z), root.at(o.x + o.w / 2, o.y + o.h / 2, o.z)], false);
        });
        if (side)
            root.rig.openings.filter(o => o.face === "top").forEach(o => root.slab(c, o.x, 0, roof + 0.05, o.w, 0.1));
    }
    function drawGround(c: var) {
        const end = root.face === "front" || root.face === "rear", y = root.at(0, 0, 0).y;
        c.lineWidth = Tone.hair; c.strokeStyle = Tone.quiet; c.beginPath(); c.moveTo(4, y); c.lineTo(root.width - 4, y);
        for (let x = 12; x < root.width - 8; x += end ? 14 : 18) { c.moveTo(x, y); c.lineTo(x - 5, y + 5); }
        c.stroke();
    }
    // A heavy line where the feet are; round the body for roof and underneath; dashed for inside.
    function drawStand(c: var) {
        const p = root.stand, g = root.rig, end = root.face === "rear" || root.face === "front";
        c.strokeStyle = Tone.ink;
        if (p.level === "inside") {
            const a = root.at(p.from, 0, g.floorHeight + g.bodyHeight - 0.15), b = root.at(p.to, 0, g.floorHeight + 0.12);
            c.save(); root.rounded(c, root.body()); c.clip(); // a curved roof ends the box
            c.lineWidth = Tone.stroke; c.setLineDash([4, 3]); c.strokeRect(Math.min(a.x, b.x), a.y, Math.abs(b.x - a.x), b.y - a.y);
            c.restore();
            return;
        }
        c.lineWidth = Tone.stroke * 3;
        if (p.level === "ground")
            root.poly(c, end ? [root.at(0, p.from, -0.12), root.at(0, p.to, -0.12)] : [root.at(p.from, 0, -0.12), root.at(p.to, 0, -0.12)], false);
        else if (p.level !== "") {
            const w = g.bodyWidth / 2, out = k => root.at(k, w + 0.14, 0), also = k => root.at(k, -w - 0.14, 0);
            root.poly(c, [out(p.from), out(p.to)], false); root.poly(c, [also(p.from), also(p.to)], false);
        }
    }

    onPaint: {
        const c = root.getContext("2d"), side = root.face === "left" || root.face === "right", end = root.face === "front" || root.face === "rear";
        c.reset();
        c.lineJoin = "round"; c.lineCap = "round";
        if (!root.rig || !(root.box.scale > 0))
            return;
        if (side || end)
            root.drawGround(c);
        if (side) root.drawSide(c); else if (end) root.drawEnd(c); else root.drawFlat(c);
        root.drawOpenings(c);
        if (root.stand)
            root.drawStand(c);
    }
}
