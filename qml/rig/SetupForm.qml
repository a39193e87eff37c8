// SPDX-License-Identifier: Apache-2.0
// A rig's sheet in short steps: what it is, how big, what is fitted, what its plates say. The rig is drawn as
// it is typed; after the second step all the rest can wait. Faults come back to the field they belong to.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

FocusScope {
    id: root

    /// Faults as {field, what, act}.
    property var problems: []
    property string units: "si"
    /// {slug, name} of what can be fitted.
    property var fittingChoices: []
    /// Gives the fittings such a rig usually has, by kind and practice.
    property var usual: (kind, practice) => []
    /// Gives what RigView draws of the answers, with `usual` texts.
    property var draftOf: (map) => ({})
    /// The first rig of all, or one more.
    property bool first: true
    /// Of a rig that is put right: its texts by the form's keys; null for a new one.
    property var known: null
    property bool asksWho: false
    property bool demoOffered: false
    property bool canRestore: false
    /// What is being made ready, in words.
    property string waiting: ""
    property int step: 0
    signal sent(var rig)
    signal joinAsked()
    signal demoAsked()
    signal restoreAsked(string file)
    signal personTyped(string name)
    signal unitsPicked(string slug)

    property var answers: root.known ?? ({})
    /// Told before anything is sent: what the first step must know.
    property bool tried: false
    readonly property bool editing: root.known !== null
    readonly property bool begun: (root.answers.kind ?? "") !== "" && (root.answers.practice ?? "") !== ""
    readonly property var draft: root.units === "" ? ({}) : root.draftOf(root.answers) // qmllint disable
    readonly property var usualNow: root.begun ? root.usual.call(root, root.answers.kind, root.answers.practice) : []
    readonly property bool wide: root.width >= 900
    readonly property var steps: [
        { slug: "0", name: qsTr("kind", "step of a form") }, { slug: "1", name: qsTr("measures", "step of a form") },
        { slug: "2", name: qsTr("fitted", "step of a form") }, { slug: "3", name: qsTr("plates", "step of a form") }]
    readonly property var fieldsByStep: [["kind", "practice"], ["name", "length", "width", "height", "floor_height", "hitch_length", "axles"], ["fittings", "roof", "roof_walk"], ["placard", "gross", "tire_size", "load_range", "max_load", "max_pressure", "torque"]]
    readonly property var elsewhere: root.problems.filter(one => !root.fieldsByStep.some(step => step.indexOf(one.field) >= 0))

    function put(key: string, value: var) {
        const next = Object.assign({}, root.answers);
        next[key] = value;
        if ((key === "kind" || key === "practice") && !root.editing)
            delete next.fittings; // begun anew with what is usual there
        root.answers = next;
        if (key === "practice" && root.first)
            root.unitsPicked(value === "north_america" ? "us" : "si");
    }
    function fault(field: string): string {
        if (root.tried && !root.begun && (field === "kind" || field === "practice") && (root.answers[field] ?? "") === "")
            return qsTr("Choose what comes nearest.");
        const one = root.problems.find(p => p.field === field || p.field === "measures." + field);
        return one ? Format.join([one.what, one.act], ": ") : "";
    }
    function goTo(step: int) {
        root.tried = true;
        if (!root.begun && step > 0)
            return;
        root.step = step;
        page.flick.contentY = 0;
    }
    function send() {
        root.tried = true;
        if (root.begun)
            root.sent(root.answers);
        else
            root.goTo(0);
    }

    // a fault on another step is gone to: nobody looks for it
    onProblemsChanged: {
        const at = root.fieldsByStep.findIndex(step => root.problems.some(one => step.indexOf(one.field) >= 0));
        if (at >= 0 && !root.problems.some(one => root.fieldsByStep[root.step].indexOf(one.field) >= 0))
            root.step = at;
    }

    GridLayout {
        anchors.fill: parent
        columns: root.wide ? 2 : 1
        rowSpacing: 0
        columnSpacing: 0

        RigView {
            // what is typed needs the room first, where words are large
            visible: root.begun && (root.wide ? root.step > 0 : root.step === 1 && root.height > Tone.px(560))
            rig: root.draft
            face: root.draft.kerbLeft ? "left" : "right"
            noseLeft: root.draft.kerbLeft ?? true
            mostHeight: root.wide ? 360 : Math.max(70, root.height * 0.16)
            Layout.fillWidth: true
            Layout.preferredWidth: 10
            Layout.alignment: Qt.AlignTop
            Layout.topMargin: root.wide ? Tone.px(60) : 6
        }
        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 10
            Rule { visible: root.begun && root.step === 1 && !root.wide; Layout.fillWidth: true }
            Scroll {
                id: page
                spacing: 14
                Layout.fillWidth: true
                Layout.fillHeight: true

                BodyText { text: root.editing ? qsTr("Its sheet", "of the rig") : root.first ? qsTr("Your rig") : qsTr("Another rig"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 4 }
                Choice { visible: root.begun; answers: root.steps; chosen: String(root.step); Layout.fillWidth: true; onPicked: slug => root.goTo(Number(slug)) }
                Once {
                    wanted: root.step === 0
                    ColumnLayout {
                        spacing: 10
                        Layout.fillWidth: true
                        BodyText { text: qsTr("The drawing and the points to look at are made from this: four short steps, of which two are enough to begin."); quiet: true; Layout.fillWidth: true }
                        ActButton { visible: root.demoOffered && root.first && !root.begun; text: qsTr("Look round an invented rig first"); detail: root.waiting !== "" ? root.waiting : qsTr("two years of walks, trips and findings, all made up"); size: Tone.body; Layout.fillWidth: true; onClicked: root.demoAsked() }
                        SetupKind {
                            answers: root.answers
                            faultOf: field => root.fault(field)
                            draftOf: root.draftOf
                            asksWho: root.asksWho
                            units: root.units
                            Layout.fillWidth: true
                            onTyped: (key, value) => root.put(key, value)
                            onPersonTyped: name => root.personTyped(name)
                            onUnitsPicked: slug => root.unitsPicked(slug)
                        }
                        WordButton { visible: root.first; text: qsTr("or take part in a rig of another device"); Layout.fillWidth: true; onClicked: root.joinAsked() }
                        WordButton { visible: root.first && root.canRestore; text: qsTr("or bring a logbook back from a backup"); Layout.fillWidth: true; onClicked: backups.ask() }
                    }
                }
                Once {
                    wanted: root.step === 1
                    SetupMeasures { answers: root.answers; faultOf: field => root.fault(field); draft: root.draft; units: root.units; everything: root.editing; Layout.fillWidth: true; onTyped: (key, value) => root.put(key, value) }
                }
                Once {
                    wanted: root.step === 2
                    SetupFitted { answers: root.answers; faultOf: field => root.fault(field); draft: root.draft; choices: root.fittingChoices; usual: root.usualNow; Layout.fillWidth: true; onTyped: (key, value) => root.put(key, value) }
                }
                Once {
                    wanted: root.step === 3
                    SetupPlates { answers: root.answers; faultOf: field => root.fault(field); units: root.units; Layout.fillWidth: true; onTyped: (key, value) => root.put(key, value) }
                }
                Repeater {
                    model: root.elsewhere
                    BodyText { required property var modelData; text: Format.join([modelData.what, modelData.act], ": "); font.bold: true; Layout.fillWidth: true }
                }
                BodyText {
                    visible: root.problems.length > root.elsewhere.length
                    text: qsTr("%n answer(s) to put right, told above", "", root.problems.length)
                    font.bold: true
                    Layout.fillWidth: true
                }
            }
            Flow {
                id: acts
                readonly property real half: root.step > 0 && root.step < 3 && width >= Tone.px(300) ? (width - spacing) / 2 : width
                spacing: Tone.gap
                Layout.fillWidth: true
                Layout.maximumWidth: page.widest + 2 * Tone.margin
                Layout.margins: Tone.gap
                Layout.leftMargin: Tone.margin
                Layout.rightMargin: Tone.margin
                ActButton { visible: root.step > 0 || root.editing; text: root.editing ? qsTr("Write it down") : qsTr("Draw it"); detail: root.editing || root.step === 3 ? "" : qsTr("the rest can wait"); filled: true; size: Tone.body; width: acts.half; height: Math.max(Tone.markHeight, implicitContentHeight + topPadding + bottomPadding); onClicked: root.send() }
                ActButton { visible: root.step < 3; text: [qsTr("Next: how big"), qsTr("Next: what is fitted"), qsTr("Next: its plates")][root.step] ?? ""; filled: root.step === 0 && !root.editing; size: Tone.body; width: acts.half; height: Math.max(Tone.markHeight, implicitContentHeight + topPadding + bottomPadding); onClicked: root.goTo(root.step + 1) }
            }
        }
    }

    FilePick { id: backups; over: root; title: qsTr("A backup of a logbook"); filters: [qsTr("Logbooks (*.snugwalk)"), qsTr("All files (*)")]; onChosen: file => root.restoreAsked(file) }
}
