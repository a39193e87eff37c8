// SPDX-License-Identifier: Apache-2.0
// Then and now side by side at one scale. Pressing now shows then in its place, and back.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

RowLayout {
    id: root

    required property string then
    required property string now
    property string what: ""

    readonly property bool swapped: press.down || press.held

    spacing: Tone.gap

    ColumnLayout {
        spacing: 2
        PhotoTile { photo: root.then; caption: qsTr("then, %1", "photo").arg(root.what); full: true; Layout.fillWidth: true; Layout.preferredHeight: width * 0.75 }
        BodyText { text: qsTr("then", "earlier walk"); level: "small"; quiet: true; Layout.fillWidth: true }
    }
    Press {
        id: press
        property bool held: false
        enabled: root.then !== "" && root.now !== ""
        opacity: 1
        spoken: root.swapped ? qsTr("shows then in the place of now") : qsTr("now; press to see then in its place")
        Layout.fillWidth: true
        onClicked: held = !held
        contentItem: ColumnLayout {
            spacing: 2
            PhotoTile { photo: root.swapped ? root.then : root.now; caption: qsTr("now, %1", "photo").arg(root.what); full: true; Layout.fillWidth: true; Layout.preferredHeight: width * 0.75 }
            BodyText { text: root.swapped ? qsTr("then, in its place") : press.enabled ? qsTr("now; press for then") : qsTr("now", "later walk"); level: "small"; quiet: !root.swapped; font.bold: root.swapped; Layout.fillWidth: true; Accessible.ignored: true }
        }
    }
}
