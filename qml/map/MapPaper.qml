// SPDX-License-Identifier: Apache-2.0
// The map itself. Fingers move the sheet that is there; the next one is laid out elsewhere and takes its place.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

FocusScope {
    id: root

    required property MapModel map
    signal opened(string kind, string id)

    readonly property var sheet: root.map.sheet
    readonly property bool drawn: (root.sheet.width ?? 0) > 0
    readonly property real over: root.sheet.over ?? 0
    readonly property bool handled: drag.active || pinch.active
    /// What was done to the sheet since it was laid out: enlarged about `about`, then moved.
    property real scaled: 1
    property point about: Qt.point(0, 0)
    property point moved: Qt.point(0, 0)
    property point before: Qt.point(0, 0)

    /// Degrees along the upper and the left edge that have room; larger words leave some out.
    readonly property var degrees: {
        const high = Tone.small * 1.5, kept = [];
        let right = 0, low = bar.y - high;
        for (const line of root.sheet.grid ?? []) {
            const wide = line.text.length * Tone.small * 0.6 + 10;
            if (line.meridian && line.at >= right && line.at + wide < root.width) {
                kept.push(line);
                right = line.at + wide;
            } else if (!line.meridian && line.at > high * 1.5 && line.at < low) {
                kept.push(line);
                low = line.at - high;
            }
        }
        return kept;
    }

    function fit() { root.map.fit(root.width, root.height, Tone.target, Tone.small) }
    function shift(across: real, down: real) {
        root.moved = Qt.point(root.moved.x + across, root.moved.y + down);
        root.map.move(across, down);
    }
    function nearer(factor: real) { root.map.zoom(factor, root.width / 2, root.height / 2) }
    function press(x: real, y: real) {
        const trip = root.map.tripAt(x - root.moved.x, y - root.moved.y);
        if (trip !== "")
            root.opened("trip", trip);
        else
            root.shift(root.width / 2 - x, root.height / 2 - y);
    }
    function openGroup(index: int) {
        const group = root.sheet.groups[index];
        if (group.count > 1 || group.kind === "stay")
            root.map.choose(index);
        else
            root.opened(group.kind, group.id);
    }

    clip: true
    activeFocusOnTab: true
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    Accessible.role: Accessible.Graphic
    Accessible.name: root.sheet.spoken ?? ""
    Accessible.focusable: true

    onWidthChanged: root.fit()
    onHeightChanged: root.fit()
    onSheetChanged: {
        if (root.handled)
            return;
        root.scaled = 1;
        root.moved = Qt.point(0, 0);
    }
    Component.onCompleted: root.fit()

    Keys.onPressed: event => {
        const step = { [Qt.Key_Left]: [1, 0], [Qt.Key_Right]: [-1, 0], [Qt.Key_Up]: [0, 1], [Qt.Key_Down]: [0, -1] }[event.key];
        event.accepted = true;
        if (step)
            root.shift(step[0] * root.width / 4, step[1] * root.height / 4);
        else if (event.key === Qt.Key_Plus || event.key === Qt.Key_Equal)
            root.nearer(2);
        else if (event.key === Qt.Key_Minus)
            root.nearer(0.5);
        else if (event.key === Qt.Key_0)
            root.map.whole();
        else
            event.accepted = false;
    }

    DragHandler {
        id: drag
        target: null
        enabled: !Tone.gloves
        onActiveChanged: {
            if (drag.active)
                root.before = root.moved;
            else
                root.map.move(root.moved.x - root.before.x, root.moved.y - root.before.y);
        }
        onActiveTranslationChanged: if (drag.active) root.moved = Qt.point(root.before.x + drag.activeTranslation.x, root.before.y + drag.activeTranslation.y)
    }
    PinchHandler {
        id: pinch
        target: null
        enabled: !Tone.gloves
        onActiveChanged: {
            if (pinch.active) {
                root.before = root.moved;
                root.about = pinch.centroid.position;
                return;
            }
            // an enlargement and a shift together leave one point where it was
            const across = root.moved.x - root.before.x, down = root.moved.y - root.before.y, rest = 1 - root.scaled;
            if (Math.abs(rest) > 0.02)
                root.map.zoom(root.scaled, root.about.x + across / rest, root.about.y + down / rest);
            else
                root.map.move(across, down);
        }
        onActiveScaleChanged: if (pinch.active) root.scaled = pinch.activeScale
        onCentroidChanged: if (pinch.active) root.moved = Qt.point(root.before.x + pinch.centroid.position.x - root.about.x, root.before.y + pinch.centroid.position.y - root.about.y)
    }
    WheelHandler {
        acceptedDevices: PointerDevice.Mouse | PointerDevice.TouchPad
        onWheel: event => root.map.zoom(Math.pow(2, event.angleDelta.y / 240), event.x, event.y)
    }
    TapHandler { onTapped: point => root.press(point.position.x, point.position.y) }

    Rectangle { anchors.fill: parent; color: Tone.paper }
    Item {
        id: paper
        visible: root.drawn
        width: root.width
        height: root.height
        transform: [
            Scale { origin.x: root.about.x; origin.y: root.about.y; xScale: root.scaled; yScale: root.scaled },
            Translate { x: root.moved.x; y: root.moved.y }
        ]
        Canvas {
            id: land
            x: -root.over * root.width
            y: -root.over * root.height
            width: (1 + 2 * root.over) * root.width
            height: (1 + 2 * root.over) * root.height
            readonly property var look: [root.sheet, Tone.theme]
            onLookChanged: requestPaint()
            onWidthChanged: requestPaint()

            function trace(c: var, flat: var, closed: bool) {
                c.moveTo(flat[0], flat[1]);
                for (let i = 2; i + 1 < flat.length; i += 2)
                    c.lineTo(flat[i], flat[i + 1]);
                if (closed)
                    c.closePath();
            }
            onPaint: {
                const c = land.getContext("2d"), sheet = root.sheet;
                c.reset();
                if (!sheet.land)
                    return;
                c.fillStyle = Tone.paper; c.fillRect(0, 0, land.width, land.height);
                c.translate(-land.x, -land.y);
                c.lineJoin = "round"; c.lineCap = "butt";
                if (sheet.sea) {
                    c.fillStyle = Tone.band; c.fillRect(land.x, land.y, land.width, land.height);
                    c.beginPath();
                    for (const ring of sheet.land)
                        land.trace(c, ring, true);
                    c.fillRule = Qt.OddEvenFill;
                    c.fillStyle = Tone.paper; c.fill();
                    c.strokeStyle = Tone.quiet; c.lineWidth = Tone.stroke; c.stroke();
                }
                c.strokeStyle = Tone.line; c.lineWidth = Tone.hair; c.globalAlpha = Tone.sun ? 0.35 : 1; c.beginPath();
                for (const line of sheet.grid) {
                    c.moveTo(line.meridian ? line.at : land.x, line.meridian ? land.y : line.at);
                    c.lineTo(line.meridian ? line.at : land.x + land.width, line.meridian ? land.y + land.height : line.at);
                }
                c.stroke();
                c.globalAlpha = 1;
                // paper beside the lines keeps them apart from coast and grid
                c.lineCap = "round"; c.strokeStyle = Tone.paper; c.lineWidth = Tone.stroke + 4; c.beginPath();
                for (const line of sheet.lines)
                    land.trace(c, line.points, false);
                c.stroke();
                c.lineCap = "butt"; c.strokeStyle = Tone.ink; c.lineWidth = Tone.stroke;
                for (const line of sheet.lines) {
                    c.setLineDash(Array.from(line.dash));
                    c.beginPath(); land.trace(c, line.points, false); c.stroke();
                }
                c.setLineDash([]);
            }
        }
        Repeater {
            model: root.sheet.labels ?? []
            Item {
                id: label
                required property var modelData
                Rectangle { x: label.modelData.x - 2; y: label.modelData.y - 2; width: 5; height: 5; radius: 2.5; color: Tone.quiet }
                BodyText {
                    x: Math.round(label.modelData.left + (label.modelData.left > label.modelData.x ? 0
                        : label.modelData.left + label.modelData.width < label.modelData.x ? label.modelData.width - width : (label.modelData.width - width) / 2))
                    y: Math.round(label.modelData.top + (label.modelData.height - height) / 2)
                    text: label.modelData.text
                    level: "small"
                    quiet: true
                    wrapMode: Text.NoWrap
                    style: Text.Outline
                    styleColor: Tone.paper
                    Accessible.ignored: true
                }
            }
        }
        Repeater {
            model: root.sheet.groups ?? []
            MapSpot {
                required property var modelData
                required property int index
                readonly property real fromLeft: modelData.x + root.moved.x
                readonly property real fromTop: modelData.y + root.moved.y
                visible: root.handled || fromLeft > 0 && fromLeft < root.width && fromTop > 0 && fromTop < root.height
                x: Math.round(modelData.x - width / 2)
                y: Math.round(modelData.y - height / 2)
                shape: modelData.shape
                // cut by the edge a number reads as another one
                readonly property bool whole: fromTop > height / 2 + Tone.small * 1.5 && fromTop < root.height - height / 2 && fromLeft < root.width - width
                count: root.handled || whole ? modelData.count : 1
                spoken: modelData.spoken
                onClicked: root.openGroup(index)
            }
        }
        Repeater {
            model: root.degrees
            BodyText {
                required property var modelData
                x: modelData.meridian ? modelData.at + 3 : 3
                y: modelData.meridian ? 2 : modelData.at + 1
                visible: !root.handled
                text: modelData.text
                level: "small"
                quiet: true
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }
    Rectangle {
        id: bar
        readonly property real reach: root.sheet.scale?.length ?? 0
        visible: bar.reach > 0
        x: 6
        y: root.height - height - 6
        width: Math.max(bar.reach, scaleText.width) + 12
        height: scaleText.height + 10
        color: Tone.paper
        BodyText { id: scaleText; x: 6; y: 1; text: root.sheet.scale?.text ?? ""; level: "small"; wrapMode: Text.NoWrap; Accessible.ignored: true }
        Rectangle { x: 6; y: parent.height - 6; width: bar.reach; height: Tone.stroke; color: Tone.ink }
        Rectangle { x: 6; y: parent.height - 10; width: Tone.stroke; height: 6; color: Tone.ink }
        Rectangle { x: 6 + bar.reach - width; y: parent.height - 10; width: Tone.stroke; height: 6; color: Tone.ink }
    }
    Column {
        anchors { right: parent.right; bottom: parent.bottom; margins: 6 }
        spacing: 6
        PaperButton { text: "+"; spoken: qsTr("nearer", "map"); onClicked: root.nearer(2) }
        PaperButton { text: "\u2212"; spoken: qsTr("further away", "map"); onClicked: root.nearer(0.5) }
        PaperButton { text: qsTr("all", "everything on the map"); spoken: qsTr("show everything", "on the map"); onClicked: root.map.whole() }
    }
    Rectangle { anchors.fill: parent; color: "transparent"; border.width: root.activeFocus ? Tone.stroke : Tone.hair; border.color: root.activeFocus ? Tone.ink : Tone.line }

    component PaperButton: Press {
        id: button
        anchors.right: parent?.right
        leftPadding: 8
        rightPadding: 8
        contentItem: BodyText { text: button.text; font.bold: true; horizontalAlignment: Text.AlignHCenter; verticalAlignment: Text.AlignVCenter; wrapMode: Text.NoWrap; Accessible.ignored: true }
        background: Rectangle { color: button.down ? Tone.line : Tone.paper; radius: Tone.corner; border.width: Tone.hair; border.color: Tone.ink }
    }
}
