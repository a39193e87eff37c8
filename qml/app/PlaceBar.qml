// SPDX-License-Identifier: Apache-2.0
// The bottom edge of the four places: their words, the walk bar, and the emergency card in the lower right
// corner, where every other page has it too.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Rectangle {
    id: root

    required property string place
    required property string barTitle
    required property string barDetail
    /// What waits in the logbook, in a few words; "" for nothing.
    property string waiting: ""
    /// Whether the card is opened from here; a wide screen has the word in its own corner.
    property bool emergency: true
    signal placeAsked(string place)
    signal walkAsked()
    signal emergencyAsked()

    readonly property var places: [
        { slug: "rig", name: qsTr("Rig", "place: the drawing of the rig") }, { slug: "due", name: qsTr("Due", "place: what is due when") },
        { slug: "logbook", name: qsTr("Logbook", "place: walks, trips, mends") }, { slug: "bench", name: qsTr("Bench", "place: worked computations") }]

    implicitHeight: column.implicitHeight + 14
    color: Tone.paper

    Rule { width: parent.width }
    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: 4; leftMargin: 8; rightMargin: 8 }
        spacing: 4
        Flow {
            id: words
            Layout.fillWidth: true
            spacing: Tone.gap
            Repeater {
                model: root.places
                Press {
                    id: word
                    required property var modelData
                    readonly property bool here: root.place === modelData.slug
                    readonly property bool marked: modelData.slug === "logbook" && root.waiting !== ""
                    text: modelData.name
                    spoken: marked ? qsTr("%1, %2", "place, what waits there").arg(text).arg(root.waiting) : text
                    checkable: false
                    leftPadding: 4
                    rightPadding: 4
                    Accessible.role: Accessible.PageTab
                    Accessible.selected: here
                    onClicked: root.placeAsked(modelData.slug)
                    contentItem: BodyText { text: word.text; font.pixelSize: Tone.px(16); font.bold: word.here; verticalAlignment: Text.AlignVCenter; horizontalAlignment: Text.AlignHCenter; Accessible.ignored: true }
                    background: Item {
                        Rectangle { visible: word.here; anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: 6 } height: 3; color: Tone.ink }
                        Rectangle { visible: word.marked; anchors { right: parent.right; top: parent.top; topMargin: 8 } width: 8; height: 8; radius: 4; color: Tone.ink }
                    }
                }
            }
        }
        Item {
            id: low
            readonly property real word: root.emergency ? card.implicitWidth : 0
            readonly property bool beside: low.word < root.width * 0.4
            implicitHeight: low.beside ? bar.height : bar.height + card.height
            Layout.fillWidth: true
            ActButton {
                id: bar
                text: root.barTitle
                detail: root.barDetail
                filled: true
                width: low.beside && low.word > 0 ? low.width - low.word - 12 : low.width
                height: Math.max(Tone.markHeight, implicitContentHeight + topPadding + bottomPadding)
                onClicked: root.walkAsked()
            }
            WordButton {
                id: card
                visible: root.emergency
                text: qsTr("emergency", "opens the emergency card")
                strong: true
                level: Tone.px(16)
                x: low.width - width
                y: low.beside ? bar.height - height : bar.height
                onClicked: root.emergencyAsked()
            }
        }
    }
}
