// SPDX-License-Identifier: Apache-2.0
// The map with what may be chosen of it. Nothing is fetched: land and names lie beside the program.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property MapModel map
    /// Id of what to look at; "" for everything.
    property string thing: ""
    signal opened(string kind, string id)
    signal importAsked()

    property bool choosing: false
    readonly property bool listing: root.map.members.length > 0
    readonly property real most: Math.round(root.height * 0.45)

    spacing: 4
    Component.onCompleted: root.map.open(root.thing)
    Component.onDestruction: root.map.close()

    Flow {
        id: head
        spacing: 12
        Layout.fillWidth: true
        Layout.leftMargin: Tone.margin
        Layout.rightMargin: Tone.margin
        Layout.topMargin: 6
        BodyText { text: qsTr("Map"); level: "title"; height: Math.max(implicitHeight, Tone.target); verticalAlignment: Text.AlignVCenter }
        WordButton { visible: !root.map.empty; width: Math.min(implicitWidth, head.width); text: root.choosing ? qsTr("close", "what is shown") : qsTr("what is shown", "on the map"); onClicked: root.choosing = !root.choosing }
    }
    Once {
        wanted: root.map.empty
        Scroll {
            Layout.fillWidth: true
            Layout.fillHeight: true
            BodyText { text: qsTr("Nothing of this rig has a place yet."); level: "head"; Layout.fillWidth: true }
            BodyText { text: qsTr("A track from a phone or a receiver draws its trip here. A stay shows where the rig stood. A finding lies where it was looked at, if the walk was done with the position on (settings)."); Layout.fillWidth: true }
            ActButton { text: qsTr("Take a track in"); Layout.fillWidth: true; Layout.topMargin: Tone.gap; onClicked: root.importAsked() }
        }
    }
    Once {
        wanted: !root.map.empty
        MapPaper {
            map: root.map
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: Math.round(root.height * 0.3)
            onOpened: (kind, id) => root.opened(kind, id)
        }
    }
    Once {
        wanted: root.listing
        MapMembers { map: root.map; Layout.fillWidth: true; Layout.preferredHeight: Math.min(implicitHeight + Tone.margin, root.most); onOpened: (kind, id) => root.opened(kind, id) }
    }
    Once {
        wanted: root.choosing && !root.listing && !root.map.empty
        MapChoices { map: root.map; Layout.fillWidth: true; Layout.preferredHeight: Math.min(implicitHeight + Tone.margin, root.most) }
    }
    BodyText {
        visible: !root.map.empty && !root.listing && !root.choosing
        text: qsTr("Coast: Natural Earth. Names: GeoNames, CC BY 4.0.")
        level: "small"
        quiet: true
        Layout.fillWidth: true
        Layout.leftMargin: Tone.margin
        Layout.rightMargin: Tone.margin
        Layout.bottomMargin: 4
    }
}
