// SPDX-License-Identifier: Apache-2.0
// How bad it is, in the catalogue's words for this point; never chosen beforehand.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {grade, word}
    required property var grades
    property int chosen: 0
    /// Grades that may be chosen; outside they are not shown.
    property int least: 1
    property int most: 5
    signal picked(int grade)

    spacing: 0

    BodyText { text: qsTr("How bad"); level: "small"; quiet: true; Layout.fillWidth: true }
    Repeater {
        model: root.grades.filter(one => one.grade >= root.least && one.grade <= root.most)
        Press {
            id: row
            required property var modelData
            readonly property bool here: root.chosen === modelData.grade
            spoken: qsTr("grade %1: %2", "how bad, in words").arg(modelData.grade).arg(modelData.word)
            leftPadding: 12
            rightPadding: 12
            topPadding: 8
            bottomPadding: 8
            Accessible.role: Accessible.RadioButton
            Accessible.checked: here
            Layout.fillWidth: true
            onClicked: root.picked(modelData.grade)
            contentItem: RowLayout {
                spacing: 12
                Digits { text: row.modelData.grade; color: row.here ? Tone.paper : Tone.ink; Accessible.ignored: true }
                BodyText { text: row.modelData.word; color: row.here ? Tone.paper : Tone.ink; font.bold: row.here; Layout.fillWidth: true; Accessible.ignored: true }
            }
            background: Rectangle {
                color: row.here ? Tone.ink : Tone.paper
                Rule { width: parent.width; anchors.bottom: parent.bottom }
            }
        }
    }
}
