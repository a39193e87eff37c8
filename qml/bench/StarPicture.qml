// SPDX-License-Identifier: Apache-2.0
// The nuts of a wheel in the order they are tightened: the next one filled, done ones with a hub, a line to
// the one after. A press goes on; after the first round the wheel stands on the ground.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Column {
    id: root

    /// {studs, sequence: [numbers from 1, clockwise from the top]}
    required property var picture

    readonly property var sequence: root.picture.sequence
    readonly property int count: root.sequence.length
    /// Nuts tightened, over all rounds.
    property int done: 0
    readonly property bool finished: root.done >= 3 * root.count
    readonly property int step: root.done % root.count
    readonly property int round: Math.floor(root.done / Math.max(1, root.count))
    readonly property int next: root.finished ? 0 : root.sequence[root.step]
    readonly property string stage: root.finished ? qsTr("All rounds are through.")
        : root.round === 2 ? qsTr("Last round, wheel on the ground: to the maker's figure")
        : root.round === 1 ? qsTr("Second round, wheel on the ground: to about two thirds")
        : qsTr("First round, wheel off the ground: to about a third of the maker's figure")
    readonly property string now: root.finished ? "" : qsTr("nut %1, %2 of %3", "which nut, how many").arg(root.next).arg(root.step + 1).arg(root.count)

    function goOn() { if (!root.finished) root.done += 1 }
    function where(number: int, ring: real, middle: real): point {
        const turn = (number - 1) / root.count * 2 * Math.PI - Math.PI / 2;
        return Qt.point(middle + Math.cos(turn) * ring, middle + Math.sin(turn) * ring);
    }

    spacing: 8

    BodyText { text: root.stage; font.bold: true; width: root.width }
    Press {
        id: wheel
        readonly property real middle: width / 2
        readonly property real nut: Math.min(Tone.px(58), width * 0.18, width * 0.64 * Math.sin(Math.PI / root.count))
        readonly property real ring: middle - nut / 2 - 6
        spoken: root.finished ? root.stage : qsTr("%1; press for the next", "nut 4, 2 of 6").arg(root.now)
        enabled: !root.finished
        width: Math.min(root.width, Tone.px(320))
        height: width
        x: (root.width - width) / 2
        onClicked: root.goOn()
        background: Rectangle { radius: width / 2; color: wheel.down ? Tone.band : Tone.paper; border.width: Tone.hair; border.color: Tone.line }
        Item {
            anchors.fill: parent
            Canvas {
                id: lines
                anchors.fill: parent
                readonly property var look: [root.done, root.sequence, wheel.ring, Tone.theme]
                onLookChanged: requestPaint()

                function trace(c: var, nuts: var) {
                    c.beginPath();
                    nuts.map(n => root.where(n, wheel.ring, wheel.middle)).forEach((at, i) => i ? c.lineTo(at.x, at.y) : c.moveTo(at.x, at.y));
                    c.stroke();
                }
                onPaint: {
                    const c = lines.getContext("2d");
                    c.reset();
                    if (root.finished)
                        return;
                    c.lineWidth = Tone.stroke; c.strokeStyle = Tone.quiet; c.setLineDash([3, 3]);
                    lines.trace(c, root.sequence.slice(root.step));
                    c.lineWidth = Tone.stroke + 2; c.strokeStyle = Tone.ink; c.setLineDash([]);
                    lines.trace(c, root.sequence.slice(root.step, root.step + 2));
                }
            }
            Repeater {
                model: root.count
                Rectangle {
                    id: nut
                    required property int index
                    readonly property int number: index + 1
                    readonly property point at: root.where(number, wheel.ring, wheel.middle)
                    readonly property bool lit: number === root.next
                    readonly property bool through: root.finished || root.sequence.indexOf(number) < root.step
                    x: at.x - width / 2
                    y: at.y - height / 2
                    width: lit ? wheel.nut : wheel.nut * 0.86
                    height: width
                    radius: width / 2
                    color: lit ? Tone.ink : Tone.paper
                    border.width: lit ? 0 : Tone.stroke
                    border.color: through ? Tone.quiet : Tone.ink
                    Rectangle { visible: nut.through; anchors.fill: parent; anchors.margins: parent.width * 0.14; radius: width / 2; color: "transparent"; border.width: Tone.stroke; border.color: Tone.quiet }
                    Digits {
                        anchors.centerIn: parent
                        text: nut.number
                        size: Math.min(nut.lit ? Tone.head : Tone.small, wheel.nut * 0.45)
                        color: nut.lit ? Tone.paper : nut.through ? Tone.quiet : Tone.ink
                        font.bold: nut.lit
                        Accessible.ignored: true
                    }
                }
            }
            BodyText {
                anchors.centerIn: parent
                width: Math.max(40, 2 * wheel.ring - wheel.nut - 16) * 0.8
                visible: root.finished
                text: qsTr("done", "all nuts of a wheel")
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }
        }
    }
    BodyText { text: qsTr("Filled: the next nut. Heavy line: to the one after. Double ring: through in this round. Numbered clockwise from the top."); level: "small"; quiet: true; width: root.width }
    ActButton {
        text: root.finished ? qsTr("Begin again", "with the first nut") : qsTr("Tightened: the next", "a nut")
        detail: root.now
        filled: !root.finished
        height: Math.max(Tone.markHeight, implicitHeight)
        width: root.width
        onClicked: root.finished ? root.done = 0 : root.goOn()
    }
    WordButton { visible: root.done > 0 && !root.finished; text: qsTr("one nut back"); onClicked: root.done -= 1 }
}
