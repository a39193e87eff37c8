// SPDX-License-Identifier: Apache-2.0
// Cautions in full, before the first look: all on one screen, made smaller rather than scrolled.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style

Rectangle {
    id: root

    required property var parts
    property string heading: ""
    signal read()

    color: Tone.cautionPaper
    border.width: Tone.stroke
    border.color: Tone.cautionEdge
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.parts.join(" ")

    StripeBar { height: parent.height }
    ColumnLayout {
        anchors { fill: parent; leftMargin: 28; rightMargin: 14; topMargin: 14; bottomMargin: 14 }
        spacing: 10
        BodyText { visible: text !== ""; text: root.heading; level: "head"; color: Tone.cautionInk; Layout.fillWidth: true }
        Text {
            text: root.parts.join("\n\n")
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
            text: qsTr("read: go on", "cautions were read")
            filled: true
            implicitHeight: Tone.markHeight
            Layout.fillWidth: true
            onClicked: root.read()
        }
    }
}
