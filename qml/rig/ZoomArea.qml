// SPDX-License-Identifier: Apache-2.0
// How near a drawing is looked at. Two fingers, a wheel and keys; one finger moves it only once it is nearer
// than whole, so that until then a drag turns the page. Knows sizes, not what is drawn.
import QtQuick
import Snugwalk.Style

Item {
    id: root

    /// Pixels a metre at which the whole is seen, and the whole in metres.
    required property real fit
    required property real across
    required property real up
    property bool active: true

    property real zoom: 1
    /// What lies in the middle, as shares of the whole, so that another whole changes nothing here.
    property point share: Qt.point(0.5, 0.5)
    readonly property point middle: Qt.point(root.share.x * root.across, root.share.y * root.up)
    readonly property real most: 8
    readonly property real scaled: root.fit * root.zoom
    readonly property bool near: root.zoom > 1
    /// While a finger on it moves the drawing, the page must not take the drag.
    readonly property bool held: finger.active && root.near
    /// Where the whole's corner lies, in pixels of this item.
    readonly property point origin: Qt.point(root.placed(root.middle.x, root.across, root.width), root.placed(root.middle.y, root.up, root.height))

    function placed(middle: real, whole: real, room: real): real {
        const size = whole * root.scaled;
        return size <= room + 0.5 ? (room - size) / 2 : Math.max(room - size, Math.min(0, room / 2 - middle * root.scaled));
    }
    function lookAt(x: real, y: real) {
        // as far as the edges let it, so that no way back is lost beyond them
        const half = size => size / 2 / root.scaled, within = (v, whole, room) => Math.max(Math.min(half(room), whole / 2), Math.min(Math.max(whole - half(room), whole / 2), v));
        root.share = Qt.point(within(x, root.across, root.width) / root.across, within(y, root.up, root.height) / root.up);
    }
    /// The spot under (x, y), in pixels of this item, stays there.
    function zoomTo(zoom: real, x: real, y: real) {
        const to = Math.max(1, Math.min(root.most, zoom)), sx = (x - root.origin.x) / root.scaled, sy = (y - root.origin.y) / root.scaled;
        root.zoom = to < 1.02 ? 1 : to;
        root.lookAt(sx + (root.width / 2 - x) / root.scaled, sy + (root.height / 2 - y) / root.scaled);
    }
    function step(nearer: bool) { root.zoomTo(root.zoom * (nearer ? 1.5 : 1 / 1.5), root.width / 2, root.height / 2) }
    function pan(dx: real, dy: real) { root.lookAt(root.middle.x - dx / root.scaled, root.middle.y - dy / root.scaled) }
    /// By a third of what is seen: -1, 0 or 1 each.
    function shift(right: int, down: int) { root.pan(-right * root.width / 3, -down * root.height / 3) }
    function whole() {
        root.zoom = 1;
        root.share = Qt.point(0.5, 0.5);
    }
    /// True when the key was one of the drawing's.
    function key(event: var): bool {
        switch (event.key) {
        case Qt.Key_Plus: case Qt.Key_Equal: root.step(true); return true;
        case Qt.Key_Minus: root.step(false); return true;
        case Qt.Key_0: root.whole(); return true;
        }
        if (!root.near)
            return false;
        switch (event.key) {
        case Qt.Key_Left: root.shift(-1, 0); return true;
        case Qt.Key_Right: root.shift(1, 0); return true;
        case Qt.Key_Up: root.shift(0, -1); return true;
        case Qt.Key_Down: root.shift(0, 1); return true;
        case Qt.Key_Escape: root.whole(); return true;
        }
        return false;
    }

    onActiveChanged: if (!root.active) root.whole()

    PinchHandler {
        property real from: 1
        property point at: Qt.point(0, 0)
        target: null
        enabled: root.active && !Tone.gloves
        onActiveChanged: { from = root.zoom; at = centroid.position }
        onActiveScaleChanged: if (active) root.zoomTo(from * activeScale, centroid.position.x, centroid.position.y)
        onCentroidChanged: {
            if (!active)
                return;
            root.pan(centroid.position.x - at.x, centroid.position.y - at.y);
            at = centroid.position;
        }
    }
    WheelHandler {
        target: null
        enabled: root.active
        acceptedModifiers: root.near ? Qt.KeyboardModifierMask : Qt.ControlModifier
        acceptedDevices: PointerDevice.Mouse | PointerDevice.TouchPad
        onWheel: event => root.zoomTo(root.zoom * Math.pow(2, event.angleDelta.y / 360), event.x, event.y)
    }
    PointHandler { id: finger; target: null; enabled: root.active && root.near && !Tone.gloves }
    DragHandler {
        property point at: Qt.point(0, 0)
        target: null
        enabled: root.active && root.near && !Tone.gloves
        onActiveChanged: at = centroid.pressPosition
        onCentroidChanged: {
            if (!active)
                return;
            root.pan(centroid.position.x - at.x, centroid.position.y - at.y);
            at = centroid.position;
        }
    }
}
