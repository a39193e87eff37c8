// SPDX-License-Identifier: Apache-2.0
// Writes down that a wheel was fitted, and says when its nuts are to be looked at again.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property BenchModel bench
    signal whyAsked(string point)

    readonly property var fitting: root.bench.fitting
    readonly property string when: root.fitting.when ?? ""
    property string place: ""

    visible: root.fitting.point !== undefined
    spacing: 6

    Rule { Layout.fillWidth: true }
    BodyText { text: qsTr("A wheel was fitted"); level: "head"; Layout.fillWidth: true }
    Choice {
        label: qsTr("Which wheel")
        answers: root.fitting.places ?? []
        chosen: root.place
        Layout.fillWidth: true
        onPicked: slug => root.place = slug
    }
    ActButton {
        text: qsTr("Write down the fitting")
        detail: Format.units === "us" ? qsTr("its nuts come due after 10, 25 and 50 to 100 miles, until looked at")
            : qsTr("its nuts come due after 16, 40 and 80 to 160 km, until looked at")
        enabled: root.place !== "" && !root.bench.busy
        Layout.fillWidth: true
        onClicked: { root.bench.noteWheelFitted(root.place); root.place = "" }
    }
    Press {
        id: due
        visible: root.when !== ""
        spoken: Format.join([root.fitting.title, root.when], ", ")
        topPadding: 6
        bottomPadding: 6
        Layout.fillWidth: true
        onClicked: root.whyAsked(root.fitting.point)
        contentItem: ColumnLayout {
            spacing: 1
            Pair { text: root.fitting.title ?? ""; against: root.when; first.font.bold: true; Layout.fillWidth: true }
            Repeater {
                model: root.fitting.why ?? []
                BodyText { required property string modelData; text: modelData; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
            }
        }
    }
}
