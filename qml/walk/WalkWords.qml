// SPDX-License-Identifier: Apache-2.0
// The acts beside pass and attention, as words; on a cramped screen they follow the line's text.
import QtQuick
import Snugwalk.Controls
import Snugwalk.Models

Flow {
    id: root

    required property WalkModel walk
    /// Also those that otherwise stand at the head and foot of the page.
    property bool all: false
    signal asked(string place)
    signal glanced()

    spacing: 10

    WordButton { text: qsTr("could not look", "act"); onClicked: root.asked("look_reasons") }
    WordButton { text: qsTr("not fitted", "act"); onClicked: root.walk.notFitted() }
    WordButton { text: qsTr("look again later", "act"); onClicked: root.walk.later() }
    WordButton { visible: !root.walk.grounded; text: qsTr("photos now, marks after"); onClicked: root.asked("camera") }
    WordButton { visible: root.all; text: qsTr("pass at a glance", "act"); onClicked: root.glanced() }
    WordButton { visible: root.all; text: qsTr("all lines"); onClicked: root.asked("lines") }
    WordButton { visible: root.all; text: qsTr("stop here"); onClicked: root.asked("finish") }
}
