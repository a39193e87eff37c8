// SPDX-License-Identifier: Apache-2.0
// One trip: its line, its length, and what the road did in words.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Press {
    id: root

    required property string tripId
    required property string title
    required property string date
    required property string length
    required property string roadText
    required property string wayText
    required property string note
    required property var points
    signal opened(string trip)

    topPadding: 10
    bottomPadding: 10
    leftPadding: Tone.margin
    rightPadding: Tone.margin
    spoken: Format.join([root.title, root.date, root.length, root.wayText, root.roadText, root.note], ", ")
    onClicked: root.opened(root.tripId)

    contentItem: RowLayout {
        spacing: 12
        TrackSketch { points: root.points; Layout.alignment: Qt.AlignTop }
        ColumnLayout {
            spacing: 1
            BodyText { text: root.title; font.bold: true; Layout.fillWidth: true; Accessible.ignored: true }
            BodyText { text: Format.join([root.date, root.length], ", "); level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
            BodyText { visible: text !== ""; text: root.wayText; level: "small"; Layout.fillWidth: true; Accessible.ignored: true }
            BodyText { visible: text !== ""; text: root.roadText; level: "small"; Layout.fillWidth: true; Accessible.ignored: true }
            BodyText { visible: text !== ""; text: root.note; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
        }
    }
    Rule { width: parent.width; anchors.bottom: parent.bottom }
}
