// SPDX-License-Identifier: Apache-2.0
// Cautions in full, before the first look: never scrolled; with large words one after another.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style

Rectangle {
    id: root

    required property var parts
    property string heading: ""
    signal read()

    /// With large words each caution has the card to itself.
    readonly property bool single: Tone.textScale > 1.4
    property int at: 0
    readonly property bool last: !root.single || root.at >= root.parts.length - 1

    onPartsChanged: root.at = 0

    color: Tone.cautionPaper
    border.width: Tone.stroke
    border.color: Tone.cautionEdge
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.parts.join(" ")

    StripeBar { height: parent.height }
    ColumnLayout {
        anchors { fill: parent; leftMargin: 28; rightMargin: 14; topMargin: 14; bottomMargin: 14 }
        spacing: 10
        BodyText { visible: text !== "" && !root.single; text: root.heading; level: "head"; color: Tone.cautionInk; Layout.fillWidth: true }
        Text {
            text: root.single ? root.parts[root.at] ?? "" : root.parts.join("\n\n")
            textFormat: Text.PlainText
            wrapMode: Text.Wrap
            color: Tone.cautionInk
            font.family: Tone.words
            font.pixelSize: Tone.px(20)
            minimumPixelSize: 12
            fontSizeMode: Text.Fit
            Layout.fillWidth: true
            Layout.fillHeight: true
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        ActButton {
            text: root.last ? qsTr("read: go on", "cautions were read") : qsTr("read: the next", "a caution was read")
            filled: true
            implicitHeight: Tone.markHeight
            Layout.fillWidth: true
            onClicked: if (root.last) root.read(); else root.at += 1
        }
    }
}
