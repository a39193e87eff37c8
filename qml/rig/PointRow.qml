// SPDX-License-Identifier: Apache-2.0
// One point of the rig: how often, by whose choice; opened, what can be changed about it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Item {
    id: root

    required property string point
    required property string title
    required property string zone
    required property string every
    required property string note
    required property bool isHidden
    required property bool isOwn
    required property bool hasOwnInterval
    required property PointsModel points
    property bool open: false
    signal toggledOpen()

    implicitHeight: column.implicitHeight

    ColumnLayout {
        id: column
        width: parent.width
        spacing: 0
        BodyText {
            visible: root.ListView.section !== root.ListView.previousSection
            text: root.zone
            level: "head"
            Layout.fillWidth: true
            Layout.leftMargin: Tone.margin
            Layout.topMargin: 14
        }
        Press {
            id: head
            spoken: Format.join([root.title, root.every, root.note], ", ")
            leftPadding: Tone.margin
            rightPadding: Tone.margin
            topPadding: 8
            bottomPadding: 8
            Layout.fillWidth: true
            onClicked: root.toggledOpen()
            contentItem: ColumnLayout {
                spacing: 1
                Pair { text: root.title; against: root.every; first.quiet: root.isHidden; Layout.fillWidth: true }
                BodyText { visible: text !== ""; text: root.note; level: "small"; font.bold: root.isHidden; quiet: !root.isHidden; Layout.fillWidth: true; Accessible.ignored: true }
            }
            background: Rectangle { color: root.open ? Tone.band : Tone.paper }
        }
        Once {
            wanted: root.open
            ColumnLayout {
                id: form
                spacing: 8
                Layout.fillWidth: true
                Layout.leftMargin: Tone.margin
                Layout.rightMargin: Tone.margin
                Layout.bottomMargin: Tone.gap
                GridLayout {
                    columns: form.width > Tone.px(360) ? 2 : 1
                    columnSpacing: 12
                    Layout.fillWidth: true
                    Field { id: months; label: qsTr("Every how many months"); numeric: true; Layout.fillWidth: true; Layout.preferredWidth: 10 }
                    Field { id: distance; label: qsTr("Every how far"); note: qsTr("such as 10 000 km or 6000 mi"); Layout.fillWidth: true; Layout.preferredWidth: 10 }
                }
                Flow {
                    spacing: 10
                    Layout.fillWidth: true
                    WordButton { text: qsTr("set this"); enabled: months.text.trim() !== "" || distance.text.trim() !== ""; onClicked: root.points.setEvery(root.point, months.text, distance.text) }
                    WordButton { visible: root.hasOwnInterval; text: qsTr("as the catalogue has it"); onClicked: root.points.clearEvery(root.point) }
                    WordButton { text: root.isHidden ? qsTr("show it again") : qsTr("hide it"); onClicked: root.isHidden ? root.points.showAgain(root.point) : root.points.hide(root.point) }
                }
            }
        }
        Rule { Layout.fillWidth: true }
    }
}
