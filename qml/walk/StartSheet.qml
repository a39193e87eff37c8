// SPDX-License-Identifier: Apache-2.0
// Which walk to start: each kind with what it is for, its lines and minutes.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property RigModel rig
    signal chosen(string slug, int minutes)

    readonly property var budgets: [10, 25, 60, 0]

    function duration(minutes: real): string {
        return minutes < 100 ? qsTr(", about %n minute(s)", "a walk takes", Math.round(minutes)) : qsTr(", about %n hour(s)", "a walk takes", Math.round(minutes / 60));
    }

    function spans(minutes: var): var {
        return minutes.map(one => ({ slug: String(one), name: one === 0 ? qsTr("all of it", "time for a walk") : qsTr("%n minute(s)", "time for a walk", one) }));
    }

    spacing: 0

    BodyText { text: qsTr("Start a walk"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 4; Layout.bottomMargin: Tone.gap }
    Choice {
        label: qsTr("Time there is")
        answers: root.spans(root.budgets)
        chosen: String(root.rig.budget)
        Layout.fillWidth: true
        Layout.bottomMargin: Tone.gap
        onPicked: slug => root.rig.setBudget(Number(slug))
    }
    Repeater {
        model: root.rig.kinds
        Press {
            id: kind
            required property var modelData
            text: modelData.name
            spoken: Format.join([qsTr("%1. %2", "kind of walk, what it is for").arg(modelData.name).arg(modelData.about), modelData.leftOut || modelData.jobs || ""], " ")
            topPadding: 10
            bottomPadding: 10
            Layout.fillWidth: true
            onClicked: root.chosen(modelData.walk ?? modelData.slug, modelData.budget ?? root.rig.budget)
            contentItem: ColumnLayout {
                spacing: 1
                BodyText { text: kind.modelData.name; level: "head"; Layout.fillWidth: true; Accessible.ignored: true }
                BodyText { visible: kind.modelData.suggested === true; text: qsTr("most likely the one for today"); level: "small"; font.bold: true; Layout.fillWidth: true; Accessible.ignored: true }
                BodyText { text: kind.modelData.about; level: "small"; Layout.fillWidth: true; Accessible.ignored: true }
                BodyText {
                    text: qsTr("%n line(s)", "of a walk", kind.modelData.lines) + root.duration(kind.modelData.minutes)
                    level: "small"
                    quiet: true
                    Layout.fillWidth: true
                    Accessible.ignored: true
                }
                BodyText { visible: text !== ""; text: kind.modelData.holdsLeftOut ?? ""; level: "small"; font.bold: true; Layout.fillWidth: true; Accessible.ignored: true }
                BodyText { visible: text !== ""; text: kind.modelData.leftOut || kind.modelData.jobs || ""; level: "small"; Layout.fillWidth: true; Accessible.ignored: true }
            }
            background: Rectangle {
                color: kind.down ? Tone.band : Tone.paper
                Rectangle { visible: kind.modelData.suggested === true; x: -Tone.margin; width: 6; height: parent.height; color: Tone.ink }
                Rule { width: parent.width; anchors.bottom: parent.bottom }
            }
        }
    }
}
