// SPDX-License-Identifier: Apache-2.0
// The third step: what is fitted to it, begun with what such rigs usually have.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    required property var answers
    required property var faultOf
    required property var draft
    /// {slug, name} of what can be fitted.
    required property var choices
    /// Slugs that such a rig usually has.
    required property var usual
    property bool everything: false
    signal typed(string key, var value)

    readonly property var fitted: root.answers.fittings ?? root.usual
    property var seen: [...Array.from(root.usual), ...Array.from(root.fitted)]

    spacing: 14

    BodyText { text: qsTr("What is usual is chosen already. It decides what the walks ask about."); quiet: true; Layout.fillWidth: true }
    Chooser {
        label: qsTr("Fitted to it")
        answers: root.everything ? root.choices : root.choices.filter(one => root.seen.indexOf(one.slug) >= 0)
        chosen: root.fitted
        Layout.fillWidth: true
        onFlipped: chosen => root.typed("fittings", chosen)
    }
    WordButton { visible: !root.everything; text: qsTr("more that may be fitted"); Layout.fillWidth: true; onClicked: root.everything = true }
    Choice {
        label: qsTr("What the roof is made of")
        answers: lists.roofs
        chosen: root.answers.roof ?? (root.draft.usual ?? {}).roof ?? ""
        problem: root.faultOf("roof") // qmllint disable
        Layout.fillWidth: true
        onPicked: slug => root.typed("roof", slug)
    }
    Choice {
        label: qsTr("May the roof carry a person?")
        answers: lists.roofWalk
        chosen: root.answers.roof_walk ?? "unknown"
        problem: root.faultOf("roof_walk") // qmllint disable
        Layout.fillWidth: true
        onPicked: slug => root.typed("roof_walk", slug)
    }

    SetupLists { id: lists }
}
