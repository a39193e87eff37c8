// SPDX-License-Identifier: Apache-2.0
// Then and now side by side at one scale. Pressing now shows then in its place, and back.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    required property string then
    required property string now
    property string what: ""

    readonly property real half: (root.width - Tone.gap) / 2
    readonly property bool both: root.then !== "" && root.now !== ""
    readonly property bool swapped: press.down || press.held

    implicitHeight: root.half * 0.75 + under.height + 2

    PhotoTile { width: root.half; height: width * 0.75; photo: root.then; caption: qsTr("then, %1", "photo").arg(root.what); full: true }
    BodyText { y: root.half * 0.75 + 2; width: root.half; text: qsTr("then", "earlier walk"); level: "small"; quiet: true; Accessible.ignored: true }
    PhotoTile { x: root.half + Tone.gap; width: root.half; height: width * 0.75; photo: root.swapped ? root.then : root.now; caption: qsTr("now, %1", "photo").arg(root.what); full: true }
    BodyText {
        id: under
        x: root.half + Tone.gap
        y: root.half * 0.75 + 2
        width: root.half
        text: root.swapped ? qsTr("then, in its place") : root.both ? qsTr("now; press for then") : qsTr("now", "later walk")
        level: "small"
        quiet: !root.swapped
        font.bold: root.swapped
        Accessible.ignored: true
    }
    Press {
        id: press
        property bool held: false
        visible: root.both
        x: root.half + Tone.gap
        width: root.half
        height: root.half * 0.75
        spoken: root.swapped ? qsTr("shows then in the place of now") : qsTr("now; press to see then in its place")
        onClicked: held = !held
    }
}
