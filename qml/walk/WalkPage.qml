// SPDX-License-Identifier: Apache-2.0
// The walk as a tape: done lines slide up, the line at hand lies at the thumb, two more wait below.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

FocusScope {
    id: root

    required property Session session
    /// Whether the page shows its own drawing; a wide screen has it at the left.
    property bool drawn: true
    /// A place asked for: "attention", "look_reasons", "lines", "finish", "emergency".
    signal asked(string place)
    signal photoAsked(string photo)
    signal trendAsked(string point)

    readonly property WalkModel walk: root.session.walk
    readonly property bool warned: root.walk.cautionPanel.length > 0
    readonly property bool measured: Object.keys(root.answers).some(key => root.answers[key].ok)
    /// Too little room for the tape round the line: what can move goes into its text.
    readonly property bool cramped: root.height < Tone.px(600)
    readonly property string leftText: qsTr("%n line(s) left", "of the walk", root.walk.linesLeft)
    property var answers: ({})
    /// Whether the usual reasons of "could not look" lie open; where there is room they always do.
    property bool reasoning: false
    readonly property bool roomy: root.height >= Tone.px(820) && root.walk.current >= 0 && !root.cramped && root.drawn === false
    readonly property bool reasonsOpen: (root.reasoning || root.roomy) && !root.warned && !root.keyed
    /// The field of a reading that is at hand: the keypad writes into it.
    property Item entry: null
    readonly property bool keyed: root.entry !== null && !root.warned
    readonly property Item focused: Window.activeFocusItem
    onFocusedChanged: if (root.entry && root.focused && !root.holds(root.entry, root.focused) && !root.holds(pad, root.focused)) root.entry = null

    function holds(box: Item, item: Item): bool {
        for (let up = item; up; up = up.parent)
            if (up === box)
                return true;
        return false;
    }
    /// The readings' fields in their order.
    function fields(item: Item): var {
        let found = item.visible && item.place !== undefined && item.reading !== undefined && item.write !== undefined ? [item] : []; // qmllint disable
        for (let i = 0; i < item.children.length; ++i)
            found = found.concat(root.fields(item.children[i]));
        return found;
    }
    function following(): Item {
        const all = root.fields(current);
        return all[all.indexOf(root.entry) + 1] ?? null;
    }
    function leaveKeypad() {
        const field = root.entry;
        root.entry = null;
        // tells its figure
        field.input.focus = false; // qmllint disable
        root.forceActiveFocus();
    }

    function fullTexts(panel: var): var { return panel.map(one => one.full) }
    /// What is known to be open here is asked for first; it is never passed over.
    function pass(how: string) {
        if (root.walk.untold > 0)
            root.asked("attention");
        else
            root.walk.pass(how !== "" ? how : root.measured ? "measured" : "looked");
    }
    function keep(key: string, ok: bool, message: string) {
        const all = Object.assign({}, root.answers);
        all[key] = { ok: ok, message: message };
        root.answers = all;
    }

    Connections {
        target: root.walk
        function onCurrentChanged() { if (root.line !== root.walk.current) { root.line = root.walk.current; root.answers = {}; root.reasoning = false; root.entry = null } }
        function onReadingChecked(slug: string, place: string, ok: bool, message: string) { root.keep(slug + "/" + place, ok, message) }
    }
    property int line: root.walk.current

    Shortcut { sequence: "P"; enabled: !root.warned && root.walk.active; onActivated: root.pass("") }
    Shortcut { sequence: "A"; enabled: !root.warned && root.walk.active; onActivated: root.asked("attention") }
    Shortcut { sequence: "U"; enabled: root.walk.canUndo; onActivated: root.walk.undo() }
    Shortcut { sequence: "Down"; enabled: root.walk.current + 1 < root.walk.count; onActivated: root.walk.goTo(root.walk.current + 1) }
    Shortcut { sequence: "Up"; enabled: root.walk.current > 0; onActivated: root.walk.goTo(root.walk.current - 1) }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0

        RowLayout {
            visible: !root.keyed || !root.cramped && Tone.textScale < 1.4 // the figures need the room
            Layout.fillWidth: true
            Layout.leftMargin: Tone.margin
            Layout.rightMargin: Tone.margin - 4
            Layout.topMargin: 6
            ColumnLayout {
                spacing: 0
                BodyText { text: root.walk.kindName; level: "head"; font.pixelSize: root.cramped ? Tone.body : Tone.head; Layout.fillWidth: true }
                BodyText { text: qsTr("%1; %2", "stand; lines left").arg(root.walk.standName).arg(root.leftText); level: "small"; quiet: true; Layout.fillWidth: true }
            }
            WordButton { visible: !root.cramped; text: qsTr("all lines"); Layout.alignment: Qt.AlignTop; onClicked: root.asked("lines") }
            WordButton { visible: !root.cramped; text: qsTr("undo"); enabled: root.walk.canUndo; Layout.alignment: Qt.AlignTop; onClicked: root.walk.undo() }
        }

        Item {
            id: above
            visible: !root.warned && !root.keyed
            Layout.fillWidth: true
            // beside the drawing of a wide screen nothing is left to show above the first line but its words
            readonly property bool filled: root.drawn || done.visible
            Layout.fillHeight: above.filled
            Layout.preferredHeight: above.filled ? -1 : help.implicitHeight + 12
            // the drawing keeps its room before the line's text does, which can be scrolled
            Layout.minimumHeight: root.drawn ? (root.cramped ? 0 : drawing.leastHeight) : done.visible ? 2 * Tone.px(34) + 8 : 0
            clip: true
            readonly property bool both: !root.drawn || above.height >= drawing.leastHeight + done.implicitHeight
            readonly property real doneHeight: Math.min(done.visible && above.both ? done.implicitHeight : 0, above.height)
            StandDrawing {
                id: drawing
                // with gloves the words that turn the page take that room
                readonly property real leastHeight: Tone.gloves && root.height < Tone.px(800) ? 0 : 64 + 20 + foot + 4
                visible: root.drawn && above.height - above.doneHeight >= implicitHeight
                anchors { left: parent.left; right: parent.right }
                y: Math.max(0, (above.height - above.doneHeight - implicitHeight) / 2)
                height: implicitHeight
                model: root.session.rig
                standSlug: root.walk.standSlug
                mostHeight: Math.max(64, above.height - above.doneHeight - 28 - foot)
                onOpened: root.asked("attention")
            }
            BodyText {
                id: help
                visible: !drawing.visible && above.height > implicitHeight + (root.drawn ? above.doneHeight : Tone.px(34))
                anchors { left: parent.left; right: parent.right; margins: Tone.margin }
                text: root.walk.standHelp
                level: "small"
                quiet: true
            }
            TapeStrip { id: done; opacity: above.both || !drawing.visible ? 1 : 0; walk: root.walk; ahead: false; lines: root.drawn ? 2 : Math.max(1, Math.floor((above.height - help.height - 8) / Tone.px(34))); width: parent.width; height: Math.min(implicitHeight, above.height); anchors.bottom: parent.bottom }
        }

        CautionCard {
            visible: root.warned
            parts: root.fullTexts(root.walk.cautionPanel)
            heading: root.walk.title
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.margins: 8
            onRead: root.walk.cautionsRead()
        }
        Rectangle {
            visible: !root.warned
            color: Tone.band
            implicitHeight: now.implicitHeight
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: now.Layout.minimumHeight
            Layout.preferredHeight: implicitHeight
            Layout.maximumHeight: implicitHeight
            Rule { width: parent.width; color: Tone.ink; z: 1 }
            Rule { width: parent.width; color: Tone.ink; anchors.bottom: parent.bottom }
            ColumnLayout {
                id: now
                anchors.fill: parent
                spacing: 6
                CurrentLine {
                    id: current
                    walk: root.walk
                    onEntered: field => root.entry = field
                    answers: root.answers
                    onPhotoAsked: photo => root.photoAsked(photo)
                    onTrendAsked: point => root.trendAsked(point)
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Layout.preferredHeight: implicitHeight + Tone.margin
                    Layout.minimumHeight: Math.min(implicitHeight + Tone.margin, root.keyed ? 84 : 110)
                    WalkWords { visible: root.cramped; walk: root.walk; all: true; Layout.fillWidth: true; reasoned: !root.reasoning; onReasonsAsked: root.reasoning = true; onAsked: place => root.asked(place); onGlanced: root.pass("glance") }
                    ReasonChips { visible: root.cramped && root.reasonsOpen; walk: root.walk; Layout.fillWidth: true; onWritten: root.reasoning = false; onMoreAsked: root.asked("look_reasons"); onFolded: root.reasoning = false }
                }
                CautionPanel { visible: root.walk.cautions.length > 0; lines: root.walk.cautions; Layout.fillWidth: true }
                MarkBar {
                    visible: !root.keyed
                    Layout.fillWidth: true
                    Layout.leftMargin: 12
                    Layout.rightMargin: 12
                    Layout.bottomMargin: 12
                    onPassed: root.pass("")
                    onAttentionAsked: root.asked("attention")
                }
            }
        }
        TapeStrip {
            walk: root.walk
            ahead: true
            lines: root.drawn ? 2 : above.filled ? 4 : 6
            visible: !root.warned && !root.cramped && !root.keyed && !root.reasoning && wanted < count
            Layout.fillWidth: true
            Layout.preferredHeight: implicitHeight
            Layout.topMargin: 4
        }
        Item { visible: !above.filled && !root.warned && !root.keyed; Layout.fillHeight: true }
        ReasonChips {
            visible: !root.cramped && root.reasonsOpen
            walk: root.walk
            foldable: root.reasoning
            Layout.fillWidth: true
            Layout.leftMargin: Tone.margin - 4
            Layout.rightMargin: Tone.margin - 4
            Layout.topMargin: 6
            onWritten: root.reasoning = false
            onMoreAsked: root.asked("look_reasons")
            onFolded: root.reasoning = false
        }
        WalkWords {
            visible: !root.warned && !root.cramped && !root.keyed && !root.reasoning
            walk: root.walk
            reasoned: !root.reasonsOpen
            onReasonsAsked: root.reasoning = true
            Layout.fillWidth: true
            Layout.leftMargin: Tone.margin - 4
            Layout.rightMargin: Tone.margin - 4
            onAsked: place => root.asked(place)
        }
        Keypad {
            id: pad
            visible: root.keyed
            title: root.entry ? Format.join([root.entry.reading.title, root.entry.place === "" ? "" : root.entry.label], ", ") : "" // qmllint disable
            text: root.entry?.text ?? ""
            decimalMark: root.walk.decimalMark
            negative: root.entry?.reading.signed ?? false
            fractions: root.entry?.reading.fractions ?? false
            units: Array.from(root.entry?.reading.units ?? [])
            last: root.entry?.last ?? ""
            limits: Format.join([root.entry?.reading.limits ?? "", root.entry?.reading.basis ?? ""], "; ")
            answer: root.entry && root.entry.text !== "" ? root.entry.answer?.message ?? "" : "" // qmllint disable
            wrong: root.entry?.answer?.ok === false
            brief: root.cramped || Tone.textScale > 1.4 && root.height < 800
            more: root.keyed && root.following() !== null
            Layout.fillWidth: true
            onEdited: figure => root.entry.write(figure)
            onNextAsked: root.following().input.forceActiveFocus() // qmllint disable
            onDone: root.leaveKeypad()
        }
        Rule { Layout.fillWidth: true }
        RowLayout {
            spacing: 10
            Layout.leftMargin: Tone.margin - 4
            Layout.rightMargin: Tone.margin - 4
            Item {
                implicitHeight: ends.height
                Layout.fillWidth: true
                Flow {
                    id: ends
                    width: parent.width
                    spacing: 10
                    WordButton { visible: root.cramped; text: qsTr("undo"); enabled: root.walk.canUndo; onClicked: root.walk.undo() }
                    WordButton { visible: !root.warned && !root.cramped && !root.keyed; text: qsTr("pass at a glance", "act"); onClicked: root.pass("glance") }
                    WordButton { visible: (!root.cramped || root.warned) && !root.keyed; text: qsTr("stop here"); onClicked: root.asked("finish") }
                }
            }
            // in the lower right corner, as on every page
            WordButton { text: qsTr("emergency", "opens the emergency card"); strong: true; Layout.alignment: Qt.AlignBottom; onClicked: root.asked("emergency") }
        }
    }
}
