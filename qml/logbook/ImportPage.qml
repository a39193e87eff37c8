// SPDX-License-Identifier: Apache-2.0
// Taking a file in: which kind, what belongs to it, the file, how far it is, and what came of it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property IntakeModel intake
    /// "", "track", "weather", or "shake" and a trip's id.
    property string wish: ""

    property string kind: root.wish === "" ? "track" : root.wish.split(" ")[0]
    property string speedFile: ""

    readonly property var fault: root.intake.fault
    readonly property bool failed: (root.fault.what ?? "") !== ""
    readonly property var kinds: [
        { slug: "track", name: qsTr("a track, GPX or NMEA") }, { slug: "shake", name: qsTr("a log of shaking, CSV") }, { slug: "weather", name: qsTr("weather, CSV or EPW") }]

    function begin(file: string) {
        const places = stay.chosen === "typed" ? { place: place.text } : { stay: stay.chosen };
        root.intake.begin(root.kind, file, root.kind === "track" ? { road: road.chosen }
            : root.kind === "shake" ? { trip: trip.chosen, speedFile: root.speedFile, sensor: sensor.chosen } : Object.assign(places, { year: year.text }));
    }

    Component.onCompleted: root.intake.clear()

    spacing: 10

    BodyText { text: qsTr("Take a file in"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    Choice { label: qsTr("What it is"); answers: root.kinds; chosen: root.kind; enabled: !root.intake.busy; Layout.fillWidth: true; onPicked: slug => { root.kind = slug; root.intake.clear() } }
    Choice { id: road; visible: root.kind === "track"; label: qsTr("The road, if you know it"); answers: root.intake.roads; Layout.fillWidth: true; onPicked: slug => chosen = slug }
    BodyText { visible: root.kind === "shake" && root.intake.trips.length === 0; text: qsTr("There is no trip yet: take its track in first."); font.bold: true; Layout.fillWidth: true }
    Choice { id: trip; visible: root.kind === "shake" && root.intake.trips.length > 0; label: qsTr("Of which trip"); answers: root.intake.trips; chosen: root.wish.split(" ")[1] ?? ""; Layout.fillWidth: true; onPicked: slug => chosen = slug }
    Choice {
        id: sensor
        visible: root.kind === "shake"
        label: qsTr("Where the sensor was")
        answers: [{ slug: "rig", name: qsTr("fixed to the rig") }, { slug: "tow_vehicle", name: qsTr("in the tow vehicle") }, { slug: "unknown", name: qsTr("not known", "where a sensor was") }]
        Layout.fillWidth: true
        onPicked: slug => chosen = slug
    }
    BodyText { visible: root.kind === "shake"; text: root.speedFile === "" ? qsTr("A log without speeds needs the drive's track, or the trip's mean speed is taken.") : qsTr("Speeds from %1.", "file name").arg(decodeURIComponent(root.speedFile.split("/").pop())); level: "small"; quiet: true; Layout.fillWidth: true }
    PickWord { visible: root.kind === "shake"; text: qsTr("track that tells the speed"); filters: [qsTr("Tracks (*.gpx *.nmea *.log *.txt)")]; onChosen: file => root.speedFile = file }
    Choice {
        id: stay
        visible: root.kind === "weather"
        label: qsTr("Where it was measured, unless the file says so")
        answers: [...root.intake.places, { slug: "typed", name: qsTr("somewhere else") }]
        Layout.fillWidth: true
        onPicked: slug => chosen = slug
    }
    Field { id: place; visible: root.kind === "weather" && stay.chosen === "typed"; label: qsTr("Latitude, longitude in degrees"); note: qsTr("such as -44.27, 170.10 or 44.27 S, 170.10 E"); Layout.fillWidth: true }
    Field { id: year; visible: root.kind === "weather"; label: qsTr("Year, for a file of a typical year"); inputMethodHints: Qt.ImhDigitsOnly; Layout.fillWidth: true }
    PickAct {
        visible: !root.intake.busy
        enabled: root.kind !== "shake" || root.intake.trips.length > 0
        text: qsTr("Choose the file")
        filters: root.kind === "track" ? [qsTr("Tracks (*.gpx *.nmea *.log *.txt)")] : [qsTr("Tables (*.csv *.txt *.epw)")]
        Layout.fillWidth: true
        onChosen: file => root.begin(file)
    }
    Once {
        wanted: root.intake.busy
        ColumnLayout {
            spacing: 6
            Layout.fillWidth: true
            BodyText { text: qsTr("Reading %1", "file name").arg(root.intake.fileName); font.bold: true; Layout.fillWidth: true }
            Rectangle {
                implicitHeight: Tone.px(12)
                color: Tone.paper
                border.width: Tone.hair
                border.color: Tone.quiet
                Layout.fillWidth: true
                Accessible.role: Accessible.ProgressBar
                Accessible.name: root.intake.progress
                Rectangle { width: parent.width * root.intake.share; height: parent.height; color: Tone.ink }
            }
            BodyText { text: root.intake.share < 1 ? root.intake.progress : qsTr("%1 read; working it out", "bytes").arg(root.intake.progress); level: "small"; quiet: true; Layout.fillWidth: true }
            ActButton { text: qsTr("Stop"); detail: qsTr("nothing of it is written"); Layout.fillWidth: true; onClicked: root.intake.stop() }
        }
    }
    BodyText { visible: root.intake.stopped; text: qsTr("Stopped. Nothing of the file was written."); font.bold: true; Layout.fillWidth: true }
    Once {
        wanted: root.failed
        ColumnLayout {
            spacing: 2
            Layout.fillWidth: true
            BodyText { text: root.fault.what; level: "head"; Layout.fillWidth: true; Accessible.role: Accessible.AlertMessage }
            BodyText { visible: text !== ""; text: root.fault.where; Layout.fillWidth: true }
            BodyText { visible: text !== ""; text: qsTr("The reader says: %1", "in English").arg(root.fault.reason); quiet: true; Layout.fillWidth: true }
            BodyText { text: root.fault.act; font.bold: true; Layout.fillWidth: true }
        }
    }
    Repeater {
        model: root.intake.outcome
        BodyText { required property string modelData; required property int index; text: modelData; font.bold: index === 0; Layout.fillWidth: true }
    }
    BodyText { text: qsTr("The file stays where it is; it is read on this device, and nothing is sent anywhere."); level: "small"; quiet: true; Layout.fillWidth: true }
}
