// SPDX-License-Identifier: Apache-2.0
// One trip: what it did in a sentence, its line on the land, its stops and figures.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property TripModel trip
    /// Id; "" for the newest.
    property string tripId: ""
    signal importAsked(string what)

    readonly property bool known: root.trip.tripId !== ""
    readonly property var map: root.trip.map
    readonly property var roughness: root.trip.roughness
    readonly property bool drawn: (root.map.width ?? 0) > 0

    Component.onCompleted: root.trip.open(root.tripId)

    spacing: 6

    BodyText { visible: !root.known; text: qsTr("Trips"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: !root.known; text: qsTr("No trip yet. A track from a phone or a receiver, as GPX or NMEA, makes one."); Layout.fillWidth: true }
    ActButton { visible: !root.known; text: qsTr("Take a track in"); Layout.fillWidth: true; onClicked: root.importAsked("track") }
    BodyText { visible: root.known; text: root.trip.title; level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: root.known; text: root.trip.date; level: "small"; quiet: true; Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: root.trip.sentence; level: "head"; Layout.fillWidth: true; Layout.topMargin: 4 }
    BodyText { visible: text !== ""; text: root.trip.doubt; level: "small"; quiet: true; Layout.fillWidth: true }
    Once {
        wanted: root.drawn
        TrackMap { map: root.map; Layout.fillWidth: true; Layout.preferredHeight: implicitHeight; Layout.topMargin: Tone.gap }
    }
    BodyText {
        visible: root.known && !root.drawn && !root.trip.busy
        text: qsTr("This trip has no line to draw: it was written by hand, or its track held too few positions.")
        quiet: true
        Layout.fillWidth: true
        Layout.topMargin: Tone.gap
    }
    BodyText { visible: root.drawn; text: qsTr("North is up. Ring: start. Dot: end. Numbers: stops of five minutes or more. A broken line is a worse road."); level: "small"; quiet: true; Layout.fillWidth: true }
    Once {
        wanted: (root.roughness.bars ?? []).length > 0
        ColumnLayout {
            spacing: 4
            Layout.fillWidth: true
            Layout.topMargin: Tone.gap
            BodyText { text: qsTr("Roughness along the way, m/km"); level: "head"; Layout.fillWidth: true }
            RoadLine { road: root.roughness; Layout.fillWidth: true }
            BodyText { text: qsTr("From where the log began. Full bars: rough, over the upper broken line. Under the lower one: smooth. A gap: too slow, uneven or handled."); level: "small"; quiet: true; Layout.fillWidth: true }
        }
    }
    Repeater {
        model: root.trip.facts
        LabelRow { required property var modelData; label: modelData.label; value: modelData.value; Layout.fillWidth: true }
    }
    BodyText { visible: text !== ""; text: root.trip.note; Layout.fillWidth: true; Layout.topMargin: 4 }
    BodyText { visible: root.trip.stops.length > 0; text: qsTr("Stops"); level: "head"; Layout.fillWidth: true; Layout.topMargin: Tone.gap }
    Repeater {
        model: root.trip.stops
        LabelRow { required property var modelData; label: modelData.label; value: modelData.value; Layout.fillWidth: true }
    }
    WordButton {
        visible: root.known
        width: Math.min(implicitWidth, root.width)
        text: root.trip.measured ? qsTr("take in another log of its shaking") : qsTr("take in a log of its shaking")
        Layout.maximumWidth: root.width - 2 * Tone.margin
        onClicked: root.importAsked("shake " + root.trip.tripId)
    }
    BodyText { visible: root.drawn; text: qsTr("Coast: made from Natural Earth, public domain."); level: "small"; quiet: true; Layout.fillWidth: true }
}
