// SPDX-License-Identifier: Apache-2.0
// One input of a question: words to press, or something to type, with what was understood below.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    required property string name
    required property string label
    required property string note
    /// "number", "text", "date", "words" or "flag"
    required property string kind
    /// Several figures are typed in it.
    required property bool wide
    /// {slug, name}
    required property var choices
    required property string typed
    required property string understood
    required property string problem
    required property bool needed
    signal said(string text)

    /// It held something since the page was opened, and so stays in sight.
    property bool kept: false
    readonly property bool toType: root.kind !== "words" && root.kind !== "flag"
    readonly property string asked: root.needed || root.kind === "flag" ? root.label : qsTr("%1, if known", "a figure that may stay empty").arg(root.label)

    onTypedChanged: if (root.typed !== "") root.kept = true
    Component.onCompleted: root.kept = root.typed !== ""

    spacing: 2

    Once {
        wanted: root.toType
        Field {
            id: field
            label: root.asked
            text: root.typed
            numeric: root.kind === "number" || root.kind === "date"
            inputMethodHints: root.kind === "text" ? Qt.ImhNoPredictiveText : Qt.ImhPreferNumbers | Qt.ImhNoPredictiveText
            note: root.understood !== "" ? root.understood : root.note
            // half a number is no mistake
            problem: field.input.activeFocus ? "" : root.problem
            Layout.fillWidth: true
            onEdited: text => root.said(text)
        }
    }
    Once {
        wanted: root.kind === "words"
        Choice {
            label: root.asked
            answers: root.choices
            chosen: root.typed
            problem: root.problem
            Layout.fillWidth: true
            onPicked: slug => root.said(slug === root.typed ? "" : slug)
        }
    }
    Once {
        wanted: root.kind === "flag"
        Flow {
            id: row
            Layout.fillWidth: true
            Layout.preferredWidth: 10 // else the word's width and this width ask each other
            Chip {
                width: row.width > 0 ? Math.min(implicitWidth, row.width) : implicitWidth
                text: root.asked
                checked: root.typed !== ""
                Accessible.role: Accessible.CheckBox
                onClicked: root.said(root.typed === "" ? "yes" : "")
                onToggled: checked = Qt.binding(() => root.typed !== "")
            }
        }
    }
    BodyText { visible: !root.toType && text !== ""; text: root.note; level: "small"; quiet: true; Layout.fillWidth: true }
}
