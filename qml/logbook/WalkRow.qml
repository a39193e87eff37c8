// SPDX-License-Identifier: Apache-2.0
// One walk of the logbook; pressed, it is one of the two to compare.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Press {
    id: root

    required property string walkId
    required property string date
    required property string kindName
    required property string by
    required property string counts
    required property bool isOpen
    property bool chosen: false
    signal picked(string walkId)

    spoken: Format.join([root.date, root.kindName, root.by, root.counts], ", ")
    leftPadding: Tone.margin
    rightPadding: Tone.margin
    topPadding: 10
    bottomPadding: 10
    Accessible.role: Accessible.CheckBox
    Accessible.checked: root.chosen
    onClicked: root.picked(root.walkId)

    contentItem: ColumnLayout {
        spacing: 1
        BodyText { text: root.isOpen ? qsTr("%1, still open", "kind of walk").arg(root.kindName) : root.kindName; font.bold: true; Layout.fillWidth: true; Accessible.ignored: true }
        BodyText { text: root.by === "" ? root.date : qsTr("%1, by %2", "date, person").arg(root.date).arg(root.by); level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
        BodyText { visible: text !== ""; text: root.counts; level: "small"; Layout.fillWidth: true; Accessible.ignored: true }
    }
    background: Rectangle {
        color: root.chosen ? Tone.band : Tone.paper
        Rectangle { visible: root.chosen; width: 8; height: parent.height; color: Tone.ink }
        Rule { width: parent.width; anchors.bottom: parent.bottom }
    }
}
