// SPDX-License-Identifier: Apache-2.0
// One quantity to measure, a field a place. The last figure is shown beside it, never filled in.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {slug, title, unit, places, placeNames, last {place: text}, limits, basis, typed {place: text}}
    required property var reading
    /// Answers of the model by "slug/place": {ok, message}.
    property var answers: ({})
    signal typed(string place, string text)
    /// A field is at hand: the keypad goes to it.
    signal entered(Item field)
    signal trendAsked()

    readonly property bool known: Object.values(root.reading.last ?? {}).some(one => one !== "")
    readonly property var places: root.reading.places?.length ? root.reading.places : [""]

    function note(place: string): string {
        const last = root.reading.last?.[place] ?? "";
        return last === "" ? "" : qsTr("last time %1", "a reading").arg(last);
    }

    spacing: 2

    BodyText {
        text: root.reading.unit ? qsTr("%1, in %2", "quantity, unit").arg(root.reading.title).arg(root.reading.unit) : root.reading.title
        font.bold: true
        Layout.fillWidth: true
    }
    GridLayout {
        columns: Math.max(1, Math.min(root.places.length, Math.floor(root.width / Tone.px(150))))
        columnSpacing: 12
        Layout.fillWidth: true
        Repeater {
            model: root.places
            Field {
                id: field
                required property string modelData
                required property int index
                readonly property var reading: root.reading
                readonly property string place: modelData
                readonly property string last: root.note(modelData)
                /// What the keypad writes.
                function write(figure: string) {
                    text = figure;
                    root.typed(modelData, figure);
                }
                readonly property var answer: root.answers[root.reading.slug + "/" + modelData]
                label: modelData === "" ? qsTr("reading") : root.reading.placeNames?.[index] ?? modelData
                text: root.reading.typed?.[modelData] ?? ""
                numeric: true
                inputMethodHints: Qt.ImhPreferNumbers | Qt.ImhNoPredictiveText
                note: answer?.message ? answer.message : last
                // a figure that is being typed is not wrong yet
                problem: answer && !answer.ok && !input.activeFocus ? answer.message : ""
                Layout.fillWidth: true
                Layout.preferredWidth: 10
                Layout.alignment: Qt.AlignTop
                // the keypad is the keyboard of a phone; theirs would lie over it
                input.readOnly: Qt.platform.os === "android" || Qt.platform.os === "ios"
                input.onActiveFocusChanged: if (input.activeFocus) root.entered(field)
                input.onEditingFinished: root.typed(modelData, text)
                onEdited: figure => root.typed(modelData, figure)
            }
        }
    }
    BodyText {
        text: Format.join([root.reading.limits, root.reading.basis], "; ")
        visible: text !== ""
        level: "small"
        quiet: true
        Layout.fillWidth: true
    }
    WordButton { visible: root.known; text: qsTr("over all walks", "readings"); level: Tone.small; onClicked: root.trendAsked() }
}
