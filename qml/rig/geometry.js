// SPDX-License-Identifier: Apache-2.0
// Where a spot of the rig lies on a drawing of one face, and back. Metres: x aft of the front face,
// y right of the centre line, z above the ground.
.pragma library

/// What one face shows: the metres across and up, and which way the front points on paper.
/// `rig` has bodyLength, bodyWidth, bodyHeight, floorHeight, hitchLength; `noseLeft` for top and underside.
function extent(face, rig) {
    const long = rig.bodyLength + rig.hitchLength, high = rig.bodyHeight + rig.floorHeight;
    switch (face) {
    case "left": return { across: long, up: high, ahead: rig.hitchLength };
    case "right": return { across: long, up: high, ahead: rig.hitchLength };
    case "front":
    case "rear": return { across: rig.bodyWidth, up: high, ahead: 0 };
    default: return { across: long, up: rig.bodyWidth, ahead: rig.hitchLength };
    }
}

/// Paper place of (x, y, z) in a box {x, y, scale} whose top left is the face's top left corner.
function project(face, rig, box, noseLeft, x, y, z) {
    const e = extent(face, rig), s = box.scale, right = box.x + e.across * s, low = box.y + e.up * s;
    const along = leftOf(face, noseLeft) ? box.x + (x + e.ahead) * s : right - (x + e.ahead) * s;
    const middle = box.y + e.up * s / 2, centre = box.x + e.across * s / 2;
    switch (face) {
    case "left":
    case "right": return { x: along, y: low - z * s };
    case "front": return { x: centre - y * s, y: low - z * s };
    case "rear": return { x: centre + y * s, y: low - z * s };
    case "underside": return { x: along, y: middle + (noseLeft ? y : -y) * s };
    default: return { x: along, y: middle - (noseLeft ? y : -y) * s };
    }
}

/// The spot touched on paper: the two metres the face can tell, and the third from the face itself.
function unproject(face, rig, box, noseLeft, px, py) {
    const e = extent(face, rig), s = box.scale;
    const along = (leftOf(face, noseLeft) ? px - box.x : box.x + e.across * s - px) / s - e.ahead;
    const off = (px - box.x) / s - e.across / 2, drop = (py - box.y) / s, high = e.up - drop, wide = rig.bodyWidth / 2;
    const side = (drop - e.up / 2) * (noseLeft ? 1 : -1);
    switch (face) {
    case "left": return { x: along, y: -wide, z: high };
    case "right": return { x: along, y: wide, z: high };
    case "front": return { x: 0, y: -off, z: high };
    case "rear": return { x: rig.bodyLength, y: off, z: high };
    case "underside": return { x: along, y: side, z: rig.floorHeight };
    default: return { x: along, y: -side, z: rig.floorHeight + rig.bodyHeight };
    }
}

/// Whether the front is at the left of the paper.
function leftOf(face, noseLeft) { return face === "left" || (face !== "right" && noseLeft); }

/// Places for balloons in rows of `perRow`, in the order of `xs`, so that leaders do not cross;
/// each as near above its spot as its neighbours allow. Returns {x, row} by the index of `xs`.
function balloons(xs, width, side) {
    const perRow = Math.max(1, Math.floor(width / side));
    const order = xs.map((x, i) => i).sort((a, b) => xs[a] - xs[b]);
    const rows = Math.ceil(order.length / perRow), out = [];
    for (let row = 0; row < rows; ++row) {
        const mine = order.filter((_, k) => k % rows === row);
        let least = side / 2;
        const at = mine.map(i => least = Math.max(least, xs[i]) + side).map(x => x - side);
        let most = width - side / 2;
        for (let k = mine.length - 1; k >= 0; --k) {
            at[k] = Math.min(at[k], most);
            most = at[k] - side;
            out[mine[k]] = { x: at[k], row: row };
        }
    }
    return out;
}

/// Where a stand is on the drawing: the face to show, from and to in metres aft of the front, and
/// the level: "ground", "roof", "inside" or "under".
function standPlace(stand, rig, kerbLeft) {
    const kerb = kerbLeft ? "left" : "right", road = kerbLeft ? "right" : "left";
    const L = rig.bodyLength, first = rig.axles.length ? rig.axles[0] : L * 0.55, last = rig.axles.length ? rig.axles[rig.axles.length - 1] : first;
    const at = (face, from, to, level) => ({ face: face, from: from, to: to, level: level });
    switch (stand) {
    case "nose": return at(kerb, -Math.max(rig.hitchLength, 0.9), -0.1, "ground");
    case "kerb-front": return at(kerb, 0, first - 0.6, "ground");
    case "kerb-wheels": return at(kerb, first - 0.6, last + 0.6, "ground");
    case "kerb-rear": return at(kerb, last + 0.6, L, "ground");
    case "rear": return at("rear", -rig.bodyWidth / 2, rig.bodyWidth / 2, "ground");
    case "road-front": return at(road, 0, first - 0.6, "ground");
    case "road-wheels": return at(road, first - 0.6, last + 0.6, "ground");
    case "road-rear": return at(road, last + 0.6, L, "ground");
    case "roof": return at("top", 0, L, "roof");
    case "underneath": return at("underside", 0, L, "under");
    case "inside-front": return at(kerb, 0.2, L * 0.3, "inside");
    case "inside": return at(kerb, 0.2, L - 0.2, "inside");
    case "inside-rear": return at(kerb, L * 0.7, L - 0.2, "inside");
    case "utilities": return at(road, L * 0.5, L, "ground");
    default: return at(kerb, 0, 0, "");
    }
}
