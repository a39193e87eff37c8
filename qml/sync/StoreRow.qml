// SPDX-License-Identifier: Apache-2.0
// One store: its place, the last exchange, what is new since, and exchanging now.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {name, where, kind, last, waits}
    required property var store
    property bool able: true
    signal exchangeAsked()
    signal removeAsked()

    spacing: 2

    Rule { Layout.fillWidth: true; Layout.bottomMargin: 6 }
    BodyText { text: root.store.name; font.bold: true; Layout.fillWidth: true }
    BodyText { text: qsTr("%1: %2", "kind of store, its place").arg(root.store.kind).arg(root.store.where); level: "small"; quiet: true; wrapMode: Text.WrapAnywhere; Layout.fillWidth: true }
    BodyText { text: Format.join([root.store.last, root.store.waits], "; "); level: "small"; Layout.fillWidth: true }
    Flow {
        id: acts
        spacing: 12
        Layout.fillWidth: true
        Layout.preferredWidth: 10
        ActButton {
            width: Math.min(implicitWidth, acts.width)
            text: qsTr("Exchange now")
            spoken: qsTr("Exchange now with %1", "store").arg(root.store.name)
            size: Tone.body
            leftPadding: 16
            rightPadding: 16
            enabled: root.able
            onClicked: root.exchangeAsked()
        }
        WordButton {
            width: Math.min(implicitWidth, acts.width)
            text: qsTr("remove", "a store from the list")
            spoken: qsTr("remove %1 from the list; what lies there stays", "store").arg(root.store.name)
            enabled: root.able
            onClicked: root.removeAsked()
        }
    }
}
