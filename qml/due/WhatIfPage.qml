// SPDX-License-Identifier: Apache-2.0
// What if it goes elsewhere: legs of a plan, and the dates they would move. Nothing is written.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property WhatIfModel whatIf
    signal opened(string point)

    spacing: 8

    BodyText { text: qsTr("What if"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { text: qsTr("Say where it would stand and how far it would go: the dates that move are worked out. Nothing of this is written into the logbook."); quiet: true; Layout.fillWidth: true }
    Repeater {
        model: root.whatIf.legs
        RowLayout {
            id: leg
            required property var modelData
            required property int index
            spacing: 12
            Layout.fillWidth: true
            ColumnLayout {
                spacing: 1
                Layout.fillWidth: true
                BodyText { text: leg.modelData.title; font.bold: true; Layout.fillWidth: true }
                BodyText { text: leg.modelData.text; level: "small"; quiet: true; Layout.fillWidth: true }
            }
            WordButton { text: qsTr("take away", "a leg of the plan"); spoken: qsTr("take away %1").arg(leg.modelData.title); onClicked: root.whatIf.removeLeg(leg.index) }
        }
    }
    BodyText { visible: root.whatIf.busy; text: qsTr("Working it out …"); quiet: true; Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: root.whatIf.sentence; level: "head"; Layout.fillWidth: true; Layout.topMargin: Tone.gap }
    Repeater {
        model: root.whatIf.rows
        Press {
            id: row
            required property var modelData
            spoken: Format.join([row.modelData.title, row.modelData.moved, row.modelData.dates], ", ")
            topPadding: 6
            bottomPadding: 6
            Layout.fillWidth: true
            onClicked: root.opened(row.modelData.point)
            contentItem: ColumnLayout {
                spacing: 1
                Pair { text: row.modelData.title; against: row.modelData.moved; Layout.fillWidth: true }
                BodyText { text: row.modelData.dates; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
            }
        }
    }
    Rule { Layout.fillWidth: true; Layout.topMargin: Tone.gap }
    BodyText { text: root.whatIf.legs.length ? qsTr("One leg more") : qsTr("The first leg"); level: "head"; Layout.fillWidth: true }
    LegEntry {
        firstDay: root.whatIf.firstDay
        lastDay: root.whatIf.lastDay
        places: root.whatIf.places
        roads: root.whatIf.roads
        problems: root.whatIf.problems
        Layout.fillWidth: true
        onSent: leg => { if (root.whatIf.addLeg(leg)) clear() }
    }
}
