// SPDX-License-Identifier: Apache-2.0
// What lies under one shape of the map, a row each.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property MapModel map
    signal opened(string kind, string id)

    readonly property var members: root.map.members

    spacing: 0

    BodyText { text: qsTr("%n thing(s) here", "on the map", root.members.length); level: "head"; Layout.fillWidth: true; Layout.topMargin: 6 }
    Flow {
        id: acts
        spacing: 12
        Layout.fillWidth: true
        WordButton { visible: root.members.length > 1; width: Math.min(implicitWidth, acts.width); text: qsTr("look closer", "at the map"); onClicked: root.map.lookCloser() }
        WordButton { width: Math.min(implicitWidth, acts.width); text: qsTr("close", "a list on the map"); onClicked: root.map.choose(-1) }
    }
    Repeater {
        model: root.members
        Press {
            id: row
            required property var modelData
            enabled: row.modelData.kind !== "stay" // it has no page
            spoken: Format.join([row.modelData.title, row.modelData.detail], ", ")
            topPadding: 6
            bottomPadding: 6
            Layout.fillWidth: true
            onClicked: root.opened(row.modelData.kind, row.modelData.id)
            contentItem: RowLayout {
                spacing: 12
                MapShape { shape: row.modelData.shape; Layout.alignment: Qt.AlignTop }
                ColumnLayout {
                    spacing: 1
                    BodyText { text: row.modelData.title; font.underline: row.enabled; Layout.fillWidth: true; Accessible.ignored: true }
                    BodyText { text: row.modelData.detail; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
                }
            }
            Rule { width: parent.width; anchors.bottom: parent.bottom }
        }
    }
}
