// SPDX-License-Identifier: Apache-2.0
// Under a face: how long the body is, which face it is, and what the letters of its tanks stand for.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Item { // its height is told at once, which a column's is not
    id: root

    /// Ends of the body on paper, in pixels.
    required property real from
    required property real to
    required property real metres
    required property bool measured
    required property string text
    required property bool strong
    /// As RigSheet gives them.
    property var tanks: []

    readonly property var words: ({ fresh_water: qsTr("fresh water"), grey_water: qsTr("grey water"), black_water: qsTr("black water"), gas: qsTr("gas cylinder"), battery: qsTr("house battery") })
    readonly property var named: Array.from(root.tanks).map(one => Format.join([one.letter, root.words[one.kind]], " ")).filter((one, i, all) => all.indexOf(one) === i)

    // asked by what is shown, not by `visible`: that is false under a hidden drawing, whose height hides it
    readonly property bool sized: root.measured && root.to - root.from > length.implicitWidth + 40

    implicitHeight: size.height + name.height + (root.named.length > 0 ? legend.height : 0)

    Item {
        id: size
        visible: root.sized
        x: Math.round(root.from)
        width: Math.round(root.to - root.from)
        height: root.sized ? length.height : 0
        Rectangle { y: Math.round(parent.height / 2); width: parent.width; height: Tone.hair; color: Tone.quiet }
        Rectangle { y: Math.round(parent.height / 2) - 5; width: Tone.hair; height: 10; color: Tone.quiet }
        Rectangle { x: parent.width - width; y: Math.round(parent.height / 2) - 5; width: Tone.hair; height: 10; color: Tone.quiet }
        Rectangle { anchors { fill: length; leftMargin: -8; rightMargin: -8 } color: Tone.paper }
        BodyText { id: length; level: "small"; wrapMode: Text.NoWrap; anchors.centerIn: parent; color: Tone.quiet; text: Format.length(root.metres); Accessible.ignored: true }
    }
    BodyText {
        id: name
        y: size.height
        width: root.width
        text: root.text
        level: "small"
        quiet: !root.strong
        horizontalAlignment: Text.AlignHCenter
        Accessible.ignored: true
    }
    BodyText {
        id: legend
        visible: root.named.length > 0
        y: name.y + name.height
        width: root.width
        text: qsTr("Dashed: where such rigs usually have them, common practice, not measured: %1.").arg(root.named.join(", "))
        level: "small"
        quiet: true
        horizontalAlignment: Text.AlignHCenter
    }
}
