// SPDX-License-Identifier: Apache-2.0
// Anything of the rig by words: what was found, noted, mended, driven, and the points themselves.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property SearchModel search
    signal opened(string kind, string id)

    /// Kinds that have a page to open.
    readonly property var pages: ["point", "finding", "trip", "stay"]

    spacing: 6

    BodyText { text: qsTr("Search"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    Field {
        id: field
        label: qsTr("Words, or how they begin")
        Layout.fillWidth: true
        Layout.maximumWidth: Tone.px(480)
        Component.onCompleted: field.text = root.search.words
        onEdited: text => root.search.find(text)
    }
    BodyText {
        visible: root.search.hits.length === 0
        text: root.search.busy ? qsTr("Looking …") : root.search.words === "" ? qsTr("Findings, notes, mends, trips and points of this rig. Accents do not matter.") : qsTr("Nothing of this rig has these words.")
        quiet: true
        Layout.fillWidth: true
        Layout.topMargin: Tone.gap
    }
    Repeater {
        model: root.search.hits
        ColumnLayout {
            id: row
            required property var modelData
            readonly property bool opens: root.pages.indexOf(row.modelData.kind) >= 0
            spacing: 2
            Layout.fillWidth: true
            Rule { Layout.fillWidth: true }
            WordButton { visible: row.opens; text: row.modelData.title; Layout.fillWidth: true; onClicked: root.opened(row.modelData.kind, row.modelData.id) }
            BodyText { visible: !row.opens; text: row.modelData.title; Layout.fillWidth: true; Layout.topMargin: Tone.gap }
            BodyText { visible: text !== ""; text: row.modelData.part; level: "small"; Layout.fillWidth: true }
            BodyText { text: Format.join([row.modelData.kindText, row.modelData.date], ", "); level: "small"; quiet: true; Layout.fillWidth: true; Layout.bottomMargin: 4 }
        }
    }
}
