// SPDX-License-Identifier: Apache-2.0
// What to do at gas, CO, fire or a tingle: all of it on one screen, whatever the size of the words.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Rectangle {
    id: root

    /// {title, gas, co, fire, tingle}
    required property var card
    signal closed()

    readonly property var parts: [root.card?.gas, root.card?.co, root.card?.fire, root.card?.tingle].filter(one => one)

    // what it is stands before the first colon, in bold
    function bold(part: string): string {
        const at = part.indexOf(":");
        const plain = words => words.replace(/&/g, "&amp;").replace(/</g, "&lt;");
        return "<b>" + plain(part.slice(0, at + 1)) + "</b>" + plain(part.slice(at + 1));
    }

    color: Tone.cautionPaper
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.parts.join(" ")

    StripeBar { height: parent.height }
    ColumnLayout {
        anchors { fill: parent; leftMargin: 30; rightMargin: Tone.margin; topMargin: 14; bottomMargin: 12 }
        spacing: 8
        BodyText { text: root.card?.title ?? ""; level: "title"; color: Tone.cautionInk; Layout.fillWidth: true }
        Text {
            id: words
            text: root.parts.map(root.bold).join("<br><br>")
            textFormat: Text.StyledText
            wrapMode: Text.Wrap
            color: Tone.cautionInk
            font.family: Tone.words
            font.pixelSize: Tone.px(24)
            minimumPixelSize: 12
            fontSizeMode: Text.Fit
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.maximumWidth: 900
            Accessible.role: Accessible.StaticText
            Accessible.name: root.parts.join(" ")
        }
        ActButton {
            text: qsTr("back", "to where one was")
            filled: true
            implicitHeight: Tone.markHeight
            Layout.fillWidth: true
            onClicked: root.closed()
        }
    }
}
