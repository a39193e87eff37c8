// SPDX-License-Identifier: Apache-2.0
// The logbook's title, the ways out of it and the choice of a shelf. It goes with the rows, so that large words leave
// room for them.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    required property string shelf
    required property string waiting
    /// Space at both sides.
    required property real side
    /// What is said where there is no row.
    required property string none
    signal picked(string slug)
    signal exchangeAsked()
    signal searchAsked()
    signal reportsAsked()
    signal wentAsked()
    signal mapAsked()

    spacing: 6

    Flow {
        spacing: 12
        Layout.fillWidth: true
        Layout.leftMargin: root.side
        Layout.rightMargin: root.side
        Layout.topMargin: 6
        BodyText { text: qsTr("Logbook"); level: "title"; height: Math.max(implicitHeight, Tone.target); verticalAlignment: Text.AlignVCenter }
        WordButton { text: root.waiting === "" ? qsTr("exchange", "with other devices") : qsTr("exchange: %1", "what waits").arg(root.waiting); onClicked: root.exchangeAsked() }
        WordButton { text: qsTr("search"); onClicked: root.searchAsked() }
        WordButton { text: qsTr("map"); onClicked: root.mapAsked() }
        WordButton { text: qsTr("reports"); onClicked: root.reportsAsked() }
        WordButton { text: qsTr("how it went", "weather, roads, costs over time"); onClicked: root.wentAsked() }
    }
    Choice {
        answers: [{ slug: "walks", name: qsTr("walks") }, { slug: "trips", name: qsTr("trips") }, { slug: "mends", name: qsTr("mends") }, { slug: "photos", name: qsTr("photos") }]
        chosen: root.shelf
        Layout.fillWidth: true
        Layout.leftMargin: root.side
        Layout.rightMargin: root.side
        onPicked: slug => root.picked(slug)
    }
    BodyText { visible: text !== ""; text: root.none; quiet: true; Layout.fillWidth: true; Layout.margins: root.side }
}
