// SPDX-License-Identifier: Apache-2.0
// The second step: a name and how big. Nothing but the name has to be typed.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    required property var answers
    required property var faultOf
    /// What is drawn now, with `usual` as texts.
    required property var draft
    property string units: "si"
    /// Whether every measure is asked for, or the two that matter most.
    property bool everything: false
    signal typed(string key, var value)

    readonly property var usual: root.draft.usual ?? ({})
    readonly property bool hasAxles: root.answers.kind !== "truck_camper"
    readonly property var more: Array.from([
        { key: "width", name: qsTr("Width of the body") },
        { key: "height", name: qsTr("Height of the body, floor to roof") }, { key: "floor_height", name: qsTr("Floor above the ground") },
        { key: "hitch_length", name: qsTr("Coupling to the front of the body") }])
        .filter(one => one.key !== "hitch_length" || root.draft.hitchLength > 0 || (root.answers.hitch_length ?? "") !== "")
    readonly property bool moreAtFault: root.faultOf("axles") !== "" || root.more.some(one => root.faultOf(one.key) !== "") // qmllint disable

    function noteFor(key: string): string {
        return (root.usual[key] ?? "") === "" ? "" : qsTr("left empty: %1, as is usual", "a measure").arg(root.usual[key]);
    }

    spacing: 14

    BodyText { text: qsTr("What is left empty is drawn as such rigs usually are. Measure when there is time: all of it can be put right later."); quiet: true; Layout.fillWidth: true }
    Field { label: qsTr("Name", "of the rig"); text: root.answers.name ?? ""; problem: root.faultOf("name"); Layout.fillWidth: true; onEdited: text => root.typed("name", text) } // qmllint disable
    Field {
        label: qsTr("Length of the body, without the drawbar")
        text: root.answers.length ?? ""
        note: Format.join([root.units === "us" ? qsTr("such as 21 ft 6 in or 6.55 m") : qsTr("such as 6.4 m or 21 ft"), root.noteFor("length")], "; ")
        problem: root.faultOf("length") // qmllint disable
        Layout.fillWidth: true
        onEdited: text => root.typed("length", text)
    }
    Choice {
        visible: root.hasAxles
        label: qsTr("Axles")
        answers: [{ slug: "1", name: "1" }, { slug: "2", name: "2" }, { slug: "3", name: "3" }]
        chosen: String(root.draft.axleCount ?? "")
        Layout.fillWidth: true
        onPicked: slug => { root.typed("axles", []); root.typed("axle_count", slug) }
    }
    WordButton { visible: !root.everything && !root.moreAtFault; text: qsTr("more measures: width, height, floor, axles"); Layout.fillWidth: true; onClicked: root.everything = true }
    Once {
        wanted: root.everything || root.moreAtFault
        ColumnLayout {
            spacing: 14
            Layout.fillWidth: true
            Repeater {
                model: root.more
                Field {
                    required property var modelData
                    label: modelData.name
                    text: root.answers[modelData.key] ?? ""
                    note: root.noteFor(modelData.key)
                    problem: root.faultOf(modelData.key)
                    Layout.fillWidth: true
                    onEdited: text => root.typed(modelData.key, text)
                }
            }
            Field {
                visible: root.hasAxles
                label: qsTr("Axles, each aft of the front of the body")
                text: Array.from(root.answers.axles ?? []).join("; ")
                note: qsTr("left empty: %1, as is usual", "a measure").arg(Array.from(root.usual.axles ?? []).join("; "))
                problem: root.faultOf("axles") // qmllint disable
                Layout.fillWidth: true
                onEdited: text => root.typed("axles", text.split(/[;,]\s+|;/).filter(one => one.trim() !== ""))
            }
        }
    }
}
