// SPDX-License-Identifier: Apache-2.0
// A photo to draw on. Two taps set the ends as well as a drag does, and so do the arrow keys and Enter.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

FocusScope {
    id: root

    required property string photo
    required property var shapes
    /// "circle", "arrow" or "ruler".
    required property string tool
    property string caption: ""
    /// Ends in shares of the picture, and its width over its height.
    signal drawn(real x1, real y1, real x2, real y2, real aspect)

    /// The first end in shares while the second is awaited, else null.
    property var first: null
    property var last: null
    readonly property bool begun: root.first !== null

    function share(x: real, y: real): var {
        return { x: Math.max(0, Math.min(1, x / sheet.width)), y: Math.max(0, Math.min(1, y / sheet.height)) };
    }
    function end(at: var) {
        const from = root.first;
        root.forget();
        root.drawn(from.x, from.y, at.x, at.y, sheet.width / sheet.height);
    }
    function forget() {
        root.first = null;
        root.last = null;
    }
    function step(x: real, y: real) {
        const at = root.last ?? { x: 0.5, y: 0.5 };
        root.last = root.share((at.x + x) * sheet.width, (at.y + y) * sheet.height);
    }
    function setEnd() {
        if (root.begun)
            root.end(root.last);
        else
            root.first = root.last = root.last ?? { x: 0.5, y: 0.5 };
    }

    onToolChanged: root.forget()
    onPhotoChanged: root.forget()
    activeFocusOnTab: true
    Accessible.role: Accessible.Canvas
    Accessible.name: root.caption === "" ? qsTr("photo to draw on") : qsTr("photo to draw on: %1").arg(root.caption)
    Accessible.focusable: true
    Keys.onLeftPressed: root.step(-0.02, 0)
    Keys.onRightPressed: root.step(0.02, 0)
    Keys.onUpPressed: root.step(0, -0.02)
    Keys.onDownPressed: root.step(0, 0.02)
    Keys.onReturnPressed: root.setEnd()
    Keys.onEnterPressed: root.setEnd()
    Keys.onSpacePressed: root.setEnd()

    Rectangle { anchors.fill: parent; color: Tone.band; border.width: Tone.hair; border.color: Tone.line }
    Image {
        id: picture
        anchors.fill: parent
        anchors.margins: 1
        asynchronous: true
        fillMode: Image.PreserveAspectFit
        sourceSize.width: 1600
        sourceSize.height: 1600
        source: Picture.of(root.photo, true)
    }
    Item {
        id: sheet
        anchors.centerIn: parent
        width: Math.max(1, picture.paintedWidth)
        height: Math.max(1, picture.paintedHeight)
        visible: picture.status === Image.Ready
        DrawnLines {
            anchors.fill: parent
            shapes: root.shapes
            told: true
            draft: root.begun && root.last && (root.last.x !== root.first.x || root.last.y !== root.first.y)
                ? { kind: root.tool, x1: root.first.x, y1: root.first.y, x2: root.last.x, y2: root.last.y, text: "" } : null
        }
        Repeater {
            model: [root.first, root.last]
            Item {
                required property var modelData
                visible: modelData !== null
                x: modelData ? modelData.x * sheet.width : 0
                y: modelData ? modelData.y * sheet.height : 0
                Rectangle { width: 25; height: 5; x: -12; y: -2; color: "#FFFFFF"; border.width: 1; border.color: "#1B1F23" }
                Rectangle { width: 5; height: 25; x: -2; y: -12; color: "#FFFFFF"; border.width: 1; border.color: "#1B1F23" }
            }
        }
        MouseArea {
            id: hand
            property point down: Qt.point(0, 0)
            property bool again: false ///< this press sets the second end
            readonly property bool far: Math.hypot(mouseX - down.x, mouseY - down.y) > 12
            anchors.fill: parent
            preventStealing: true
            onPressed: mouse => {
                root.forceActiveFocus();
                hand.down = Qt.point(mouse.x, mouse.y);
                hand.again = root.begun;
                root.last = root.share(mouse.x, mouse.y);
                if (!hand.again)
                    root.first = root.last;
            }
            onPositionChanged: mouse => root.last = root.share(mouse.x, mouse.y)
            onReleased: mouse => { if (hand.again || hand.far) root.end(root.share(mouse.x, mouse.y)) }
            onCanceled: root.forget()
        }
    }
    FocusEdge { around: root; shown: root.activeFocus }
}
