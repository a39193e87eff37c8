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
    /// Whether the third mark is here; false where its reasons lie open.
    property bool reasoned: true
    signal asked(string place)
    signal glanced()
    /// The third mark was pressed: its reasons unfold.
    signal reasonsAsked()

    spacing: 10

    WordButton { visible: root.reasoned; text: qsTr("could not look", "act"); onClicked: root.reasonsAsked() }
    WordButton { text: qsTr("not fitted", "act"); onClicked: root.walk.notFitted() }
    WordButton { text: qsTr("look again later", "act"); onClicked: root.walk.later() }
    WordButton { visible: !root.walk.grounded; text: qsTr("photos now, marks after"); onClicked: root.asked("camera") }
    WordButton { visible: root.all; text: qsTr("pass at a glance", "act"); onClicked: root.glanced() }
    WordButton { visible: root.all; text: qsTr("all lines"); onClicked: root.asked("lines") }
    WordButton { visible: root.all; text: qsTr("stop here"); onClicked: root.asked("finish") }
}
