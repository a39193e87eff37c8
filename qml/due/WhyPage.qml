// SPDX-License-Identifier: Apache-2.0
// Why a point is due when it is: one sentence, the steps as a picture and in words, looks and sources.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property WhyModel why
    /// Slug; "" for the first point with a date.
    property string point: ""
    signal trendAsked(string point)
    signal whatIfAsked()

    readonly property var picture: root.why.picture
    readonly property bool drawn: (root.picture.steps ?? []).length > 0

    Component.onCompleted: root.why.open(root.point)

    spacing: 6

    BodyText { visible: root.why.title === ""; text: qsTr("Why it is due then"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: root.why.title === ""; text: qsTr("Nothing has a date yet: dates come with the first walk."); Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: root.why.title; level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: text !== ""; text: root.why.when; level: "head"; Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: root.why.sentence; Layout.fillWidth: true; Layout.topMargin: 4 }
    BodyText { visible: text !== ""; text: root.why.aged; Layout.fillWidth: true }
    Once {
        wanted: root.drawn
        ColumnLayout {
            spacing: 4
            Layout.fillWidth: true
            Layout.topMargin: Tone.gap
            Rule { Layout.fillWidth: true }
            BodyText { text: qsTr("How the date comes about"); level: "head"; Layout.fillWidth: true; Layout.topMargin: 4 }
            BodyText { text: qsTr("From the catalogue's date down: a step to the left is sooner, to the right later. Ring: likely, on its line from early to late. Upright: today."); level: "small"; quiet: true; Layout.fillWidth: true }
            WhyPicture { picture: root.picture; Layout.fillWidth: true; Layout.topMargin: 4 }
            Repeater {
                model: root.picture.steps
                LabelRow { required property var modelData; label: modelData.name; value: modelData.text; Layout.fillWidth: true }
            }
        }
    }
    Repeater {
        model: root.why.reasons
        BodyText { required property string modelData; text: modelData; level: "small"; quiet: true; Layout.fillWidth: true }
    }
    Heading { text: qsTr("What it goes by"); visible: root.why.facts.length > 0 }
    Repeater {
        model: root.why.facts
        LabelRow { required property var modelData; label: modelData.label; value: modelData.value; Layout.fillWidth: true }
    }
    Flow {
        visible: root.why.title !== ""
        spacing: 12
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        WordButton { visible: root.why.hasReadings; width: Math.min(implicitWidth, root.width - 2 * Tone.margin); text: qsTr("its readings over time"); onClicked: root.trendAsked(root.why.point) }
        WordButton { width: Math.min(implicitWidth, root.width - 2 * Tone.margin); text: qsTr("what if it goes elsewhere"); onClicked: root.whatIfAsked() }
    }
    Heading { text: qsTr("Last looks and mends"); visible: root.why.title !== "" }
    BodyText { visible: root.why.title !== "" && root.why.looks.length === 0; text: qsTr("None yet."); quiet: true; Layout.fillWidth: true }
    Repeater {
        model: root.why.looks
        LabelRow { required property var modelData; label: modelData.date; value: modelData.text; Layout.fillWidth: true }
    }
    Heading { text: qsTr("What the weather is taken from"); visible: root.why.weather.length > 0 }
    Repeater {
        model: root.why.weather
        BodyText { required property string modelData; text: modelData; level: "small"; Layout.fillWidth: true }
    }
    Heading { text: qsTr("Where the catalogue has it from"); visible: root.why.sources.length > 0 }
    Repeater {
        model: root.why.sources
        BodyText { required property string modelData; text: modelData; level: "small"; Layout.fillWidth: true }
    }

    component Heading: ColumnLayout {
        property alias text: words.text
        spacing: 4
        Layout.fillWidth: true
        Layout.topMargin: Tone.gap
        Rule { Layout.fillWidth: true }
        BodyText { id: words; level: "head"; Layout.fillWidth: true; Layout.topMargin: 4 }
    }
}
