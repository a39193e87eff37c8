// SPDX-License-Identifier: Apache-2.0
// All questions of the bench by subject. A subject's word turns the page to its questions.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property BenchModel bench
    signal opened(string question)

    function turnTo(section: Item) {
        root.flick.contentY = Math.max(0, Math.min(section.y - 6, root.flick.contentHeight - root.flick.height));
    }

    spacing: 4

    BodyText { text: qsTr("Bench", "heading: worked computations"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { text: qsTr("Numbers worked out on the spot. The maker's figure goes before any of them."); quiet: true; Layout.fillWidth: true }
    Flow {
        spacing: Tone.gap
        Layout.fillWidth: true
        Layout.preferredWidth: 10 // else the words' widths and this width ask each other
        Layout.topMargin: 4
        Repeater {
            model: root.bench.subjects
            Chip {
                required property var modelData
                required property int index
                text: modelData.title
                spoken: qsTr("to the questions on %1").arg(text)
                checkable: false
                width: Math.min(implicitWidth, root.width - 2 * Tone.margin)
                onClicked: root.turnTo(sections.itemAt(index))
            }
        }
    }
    Repeater {
        id: sections
        model: root.bench.subjects
        ColumnLayout {
            id: section
            required property var modelData
            spacing: 0
            Layout.fillWidth: true
            Layout.topMargin: 10
            BodyText { text: section.modelData.title; level: "head"; Layout.fillWidth: true; Layout.bottomMargin: 2 }
            Repeater {
                model: section.modelData.questions
                Press {
                    id: row
                    required property var modelData
                    spoken: Format.join([row.modelData.title, row.modelData.about], ". ")
                    topPadding: 8
                    bottomPadding: 8
                    Layout.fillWidth: true
                    onClicked: root.opened(row.modelData.slug)
                    contentItem: ColumnLayout {
                        spacing: 1
                        BodyText { text: row.modelData.title; font.bold: true; Layout.fillWidth: true; Accessible.ignored: true }
                        BodyText { visible: text !== ""; text: row.modelData.about; level: "small"; quiet: true; Layout.fillWidth: true; Accessible.ignored: true }
                    }
                    background: Rectangle {
                        color: row.down ? Tone.band : Tone.paper
                        Rectangle { anchors { left: parent.left; right: parent.right; bottom: parent.bottom } height: Tone.hair; color: Tone.line }
                    }
                }
            }
        }
    }
}
