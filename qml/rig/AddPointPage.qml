// SPDX-License-Identifier: Apache-2.0
// A point that only this rig has, in the owner's words.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property PointsModel points
    signal done()

    property string stand: ""
    property string zone: ""
    property string consequence: ""
    readonly property bool whole: title.text.trim() !== "" && root.stand !== "" && root.zone !== "" && root.consequence !== "" && (months.text.trim() !== "" || distance.text.trim() !== "")

    Connections {
        target: root.points
        function onAdded() { root.done() }
    }

    spacing: 12

    BodyText { text: qsTr("A point of your own"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    Field { id: title; label: qsTr("What to look at"); Layout.fillWidth: true }
    Field { id: look; label: qsTr("How"); Layout.fillWidth: true }
    Field { id: pass; label: qsTr("When it passes"); Layout.fillWidth: true }
    Choice { label: qsTr("Where one stands"); answers: root.points.stands; chosen: root.stand; Layout.fillWidth: true; onPicked: slug => root.stand = slug }
    Choice { label: qsTr("Part of the rig"); answers: root.points.zones; chosen: root.zone; Layout.fillWidth: true; onPicked: slug => root.zone = slug }
    Choice { label: qsTr("What fails with it"); answers: root.points.consequences; chosen: root.consequence; Layout.fillWidth: true; onPicked: slug => root.consequence = slug }
    Field { id: months; label: qsTr("Every how many months"); numeric: true; Layout.fillWidth: true }
    Field { id: distance; label: qsTr("Every how far"); note: qsTr("such as 10 000 km or 6000 mi"); Layout.fillWidth: true }
    ActButton {
        text: qsTr("Add it")
        detail: root.whole ? "" : qsTr("first tell what, where, what fails with it, and how often")
        enabled: root.whole
        filled: true
        implicitHeight: Math.max(Tone.markHeight, implicitContentHeight + 20)
        Layout.fillWidth: true
        onClicked: root.points.add({ title: title.text, look: look.text, pass: pass.text, stand: root.stand, zone: root.zone, consequence: root.consequence, months: months.text, distance: distance.text })
    }
}
