// SPDX-License-Identifier: Apache-2.0
// The first step: where the rig is at home, what kind it is, and who looks.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    required property var answers
    required property var faultOf
    /// Gives what RigView draws of a form's texts.
    required property var draftOf
    /// Whether the person is asked for a name: once, at the first start.
    property bool asksWho: false
    property string units: "si"
    signal typed(string key, var value)
    signal personTyped(string name)
    signal unitsPicked(string slug)

    spacing: 14

    Choice {
        label: qsTr("Where is it at home? Lamps, plugs and gas follow that.")
        answers: lists.practices
        chosen: root.answers.practice ?? ""
        problem: root.faultOf("practice") // qmllint disable
        Layout.fillWidth: true
        onPicked: slug => root.typed("practice", slug)
    }
    ColumnLayout {
        spacing: 4
        Layout.fillWidth: true
        BodyText { text: qsTr("What is it?", "kind of rig"); level: "small"; quiet: true; Layout.fillWidth: true }
        GridLayout {
            columns: Math.max(2, Math.floor(root.width / Tone.px(150)))
            columnSpacing: Tone.gap
            rowSpacing: Tone.gap
            Layout.fillWidth: true
            Repeater {
                model: lists.kinds
                KindTile {
                    required property var modelData
                    text: modelData.name
                    rig: root.draftOf({ kind: modelData.slug, practice: root.answers.practice ?? "" })
                    chosen: root.answers.kind === modelData.slug
                    Layout.fillWidth: true
                    Layout.preferredWidth: 10
                    Layout.fillHeight: true
                    onClicked: root.typed("kind", modelData.slug)
                }
            }
        }
        BodyText { visible: text !== ""; text: root.faultOf("kind"); level: "small"; font.bold: true; Layout.fillWidth: true } // qmllint disable
    }
    Choice {
        label: qsTr("Measures in; typing takes either")
        answers: [{ slug: "si", name: qsTr("metres, kPa, °C") }, { slug: "us", name: qsTr("feet, psi, °F") }]
        chosen: root.units
        Layout.fillWidth: true
        onPicked: slug => root.unitsPicked(slug)
    }
    Once {
        wanted: root.asksWho
        Field {
            label: qsTr("Your name, written beside each mark; may stay empty")
            Layout.fillWidth: true
            onEdited: text => root.personTyped(text)
        }
    }

    SetupLists { id: lists }
}
