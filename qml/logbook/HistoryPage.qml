// SPDX-License-Identifier: Apache-2.0
// A finding from its first look on: its call and why, each look with photos, each mend.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property RigModel rig
    required property string findingId
    signal done()
    signal mapAsked(string finding)
    signal photoAsked(string photo)

    readonly property var finding: root.rig.finding(root.findingId) ?? ({})
    readonly property bool known: (root.finding.id ?? "") !== ""

    spacing: 10

    BodyText { visible: !root.known; text: qsTr("Findings"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: !root.known; text: qsTr("No finding is open."); Layout.fillWidth: true }
    BodyText { visible: !root.known; text: qsTr("One begins with attention on a line of a walk, and stays here until a mend closes it."); quiet: true; Layout.fillWidth: true }
    RowLayout {
        visible: root.known
        spacing: 12
        Layout.topMargin: 6
        Glyph { kind: root.finding.kind ?? ""; size: Tone.px(34); Layout.alignment: Qt.AlignTop }
        BodyText { text: root.finding.title ?? ""; level: "title"; Layout.fillWidth: true }
    }
    BodyText { visible: root.known; text: root.finding.callText ?? ""; level: "head"; Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: Format.join([root.finding.defect, root.finding.place, root.finding.statusText], "; "); Layout.fillWidth: true }
    WordButton {
        visible: text !== ""
        text: root.finding.near ? qsTr("first seen %1: on the map", "where").arg(root.finding.near) : ""
        Layout.fillWidth: true
        onClicked: root.mapAsked(root.finding.id)
    }
    Repeater {
        model: root.finding.why ?? []
        BodyText { required property string modelData; text: modelData; level: "small"; quiet: true; Layout.fillWidth: true }
    }
    Repeater {
        model: root.finding.looks ?? []
        ColumnLayout {
            id: entry
            required property var modelData
            Layout.fillWidth: true
            Rule { Layout.fillWidth: true }
            LookEntry { look: entry.modelData; Layout.fillWidth: true; onPhotoAsked: photo => root.photoAsked(photo) }
        }
    }
    Repeater {
        model: root.finding.mends ?? []
        ColumnLayout {
            id: mended
            required property var modelData
            Layout.fillWidth: true
            Rule { Layout.fillWidth: true }
            BodyText { text: qsTr("mended %1", "date").arg(mended.modelData.date); level: "small"; quiet: true; Layout.fillWidth: true }
            BodyText { text: Format.join([mended.modelData.what, mended.modelData.parts, mended.modelData.cost, mended.modelData.by], "; "); Layout.fillWidth: true }
        }
    }
    Rule { visible: root.known; Layout.fillWidth: true }
    MendForm {
        visible: root.known
        actions: root.rig.mendActions
        Layout.fillWidth: true
        onSent: mend => {
            root.rig.mend([root.finding.id], mend);
            root.done();
        }
    }
}
