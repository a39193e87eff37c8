// SPDX-License-Identifier: Apache-2.0
// The drawing nearer and farther by pressing, for gloves, keys and screen readers; and what lies over it.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Flow {
    id: root

    /// The ZoomAreas that go together.
    required property var areas
    property bool ever: false
    signal everAsked(bool on)

    readonly property bool near: root.areas.some(one => one.near)
    readonly property bool nearest: root.areas.every(one => one.zoom >= one.most)

    function all(act: var) { root.areas.forEach(act) }

    spacing: Tone.gap

    component Step: Chip {
        checkable: false
        Accessible.role: Accessible.Button
    }
    Step { text: "+"; spoken: qsTr("drawing nearer"); enabled: !root.nearest; opacity: enabled ? 1 : 0.5; onClicked: root.all(one => one.step(true)) }
    Step { text: "\u2212"; spoken: qsTr("drawing farther"); enabled: root.near; opacity: enabled ? 1 : 0.5; onClicked: root.all(one => one.step(false)) }
    Step { visible: root.near; text: qsTr("whole", "the whole drawing"); onClicked: root.all(one => one.whole()) }
    Step { visible: root.near; text: qsTr("left", "move the drawing"); onClicked: root.all(one => one.shift(-1, 0)) }
    Step { visible: root.near; text: qsTr("right", "move the drawing"); onClicked: root.all(one => one.shift(1, 0)) }
    Step { visible: root.near; text: qsTr("up", "move the drawing"); onClicked: root.all(one => one.shift(0, -1)) }
    Step { visible: root.near; text: qsTr("down", "move the drawing"); onClicked: root.all(one => one.shift(0, 1)) }
    Chip {
        text: qsTr("every finding ever")
        width: Math.min(implicitWidth, root.width)
        checked: root.ever
        Accessible.role: Accessible.CheckBox
        onClicked: root.everAsked(!root.ever)
        onToggled: checked = Qt.binding(() => root.ever)
    }
}
