// SPDX-License-Identifier: Apache-2.0
// One entry that was set aside: what, whose, why; an owner may take it over.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {key, title, detail, who, when, reason}
    required property var entry
    property bool mayAdopt: false
    property bool able: true
    signal adopted()

    spacing: 2

    Rule { Layout.fillWidth: true; Layout.bottomMargin: 6 }
    BodyText { text: root.entry.title; font.bold: true; Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: root.entry.detail; Layout.fillWidth: true }
    BodyText { text: Format.join([root.entry.who, root.entry.when], ", "); level: "small"; quiet: true; Layout.fillWidth: true }
    BodyText { text: qsTr("Set aside: %1.", "reason").arg(root.entry.reason); level: "small"; Layout.fillWidth: true }
    WordButton {
        visible: root.mayAdopt
        text: qsTr("take it over", "an entry that was set aside")
        spoken: qsTr("take over: %1", "entry").arg(root.entry.title)
        enabled: root.able
        onClicked: root.adopted()
    }
}
