// SPDX-License-Identifier: Apache-2.0
// Keeps the answer as a reading on its point, or says what stands in the way.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property BenchModel bench
    readonly property var keeping: root.bench.keeping
    readonly property var places: root.keeping.places ?? []
    property string place: ""

    visible: root.keeping.what !== undefined
    spacing: 6

    Rule { Layout.fillWidth: true }
    Choice {
        visible: root.places.length > 0 && root.keeping.able === true
        label: qsTr("Where it was read")
        answers: root.places
        chosen: root.place
        Layout.fillWidth: true
        onPicked: slug => root.place = slug
    }
    ActButton {
        text: qsTr("Keep as reading")
        detail: root.keeping.what ?? ""
        enabled: root.keeping.able === true && (root.places.length === 0 || root.place !== "")
        Layout.fillWidth: true
        onClicked: root.bench.keep(root.place)
    }
    BodyText { visible: text !== ""; text: root.keeping.stands ?? ""; level: "small"; Layout.fillWidth: true }
}
