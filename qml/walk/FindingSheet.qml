// SPDX-License-Identifier: Apache-2.0
// A mark where something is or was wrong: what is known here comes first, on the drawing and in words;
// then what is new. Each finding keeps its own answer.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.Photo
import Snugwalk.Rig

Item {
    id: root

    required property Session session
    /// Whether each finding is shown on a face of the rig; a wide screen has the whole rig at the left.
    property bool drawn: true
    signal done()

    readonly property WalkModel walk: root.session.walk
    /// Taken once: what is typed must not go when the logbook is read again.
    property var offered: []
    property bool fresh: false
    /// What lies over the sheet: "", "camera" or "draw".
    property string over: ""
    property string drawing: ""
    property Item target: null
    property string faint: ""
    readonly property bool covered: root.over !== ""

    property int revision: 0
    readonly property var cards: root.revision >= 0 ? root.all() : []
    readonly property int told: root.cards.filter(one => one.change !== "").length
    readonly property bool whole: (root.told > 0 || root.fresh) && root.cards.every(one => one.whole) && (!root.fresh || added.whole)
    readonly property bool passing: !root.fresh && root.told > 0 && root.cards.every(one => !one.there)
    readonly property string missing: root.whole ? "" : root.told === 0 && !root.fresh ? qsTr("first tell whether it is one of these")
        : !root.cards.every(one => one.whole) ? qsTr("first tell how bad it is now") : added.missing

    function all(): var {
        const out = [];
        for (let i = 0; i < list.count; ++i)
            if (list.itemAt(i))
                out.push(list.itemAt(i));
        return out;
    }
    function uncover() { root.over = "" }
    function shoot(photos: Item, faint: string) {
        root.target = photos;
        root.faint = root.walk.grounded ? faint : "";
        root.over = "camera";
    }
    function draw(file: string) {
        root.drawing = file;
        root.over = "draw";
    }
    function write() {
        const lines = file => root.session.drawing.linesOf(file);
        const findings = root.cards.filter(one => one.change !== "").map(one => one.answer(lines));
        root.walk.attention({ findings: root.fresh ? [...findings, added.answer(lines)] : findings });
        root.done();
    }

    Component.onCompleted: {
        root.offered = root.walk.openFindings;
        root.fresh = root.offered.length === 0;
    }

    ColumnLayout {
        anchors.fill: parent
        visible: !root.covered
        spacing: 0

        Scroll {
            spacing: 14
            Layout.fillWidth: true
            Layout.fillHeight: true

            BodyText { text: root.walk.title; level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
            Spots { id: found; model: root.session.rig.findings }
            Repeater {
                id: list
                model: root.offered
                onItemAdded: ++root.revision
                onItemRemoved: ++root.revision
                OfferedFinding {
                    required property var modelData
                    finding: modelData
                    camera: root.session.camera
                    rig: root.session.rig
                    spot: root.drawn ? found.all.find(one => one.findingId === modelData.id && one.face !== "" && !isNaN(one.x)) ?? null : null
                    Layout.fillWidth: true
                    onCameraAsked: photos => root.shoot(photos, finding.photo)
                    onDrawAsked: file => root.draw(file)
                }
            }
            Choice {
                visible: root.offered.length > 0
                label: qsTr("or")
                answers: [{ slug: "new", name: qsTr("something new here") }]
                chosen: root.fresh ? "new" : ""
                Layout.fillWidth: true
                onPicked: root.fresh = !root.fresh
            }
            NewFinding {
                id: added
                visible: root.fresh
                session: root.session
                Layout.fillWidth: true
                onCameraAsked: photos => root.shoot(photos, "")
                onDrawAsked: file => root.draw(file)
            }
            BodyText {
                text: root.session.person === "" ? root.session.position.words : qsTr("%1, at %2", "who, where on earth").arg(root.session.person).arg(root.session.position.words)
                level: "small"
                quiet: true
                Layout.fillWidth: true
            }
        }
        Rule { Layout.fillWidth: true }
        ActButton {
            text: root.passing ? qsTr("Write down: pass") : qsTr("Write down")
            detail: root.missing
            filled: true
            enabled: root.whole
            implicitHeight: Math.max(Tone.markHeight, implicitContentHeight + 20)
            Layout.fillWidth: true
            Layout.margins: 12
            onClicked: root.write()
        }
    }
    Once {
        wanted: root.over === "camera"
        CameraPage {
            anchors.fill: root
            camera: root.session.camera
            faint: root.faint
            inner: true
            // one photo is the rule: back to the finding without a press, and again for another
            onTaken: file => { (root.target as PhotoChoice)?.add([file]); root.uncover() }
            onDone: root.uncover()
        }
    }
    Once {
        wanted: root.over === "draw"
        DrawPage { anchors.fill: root; drawing: root.session.drawing; sync: root.session.sync; photo: root.drawing; inner: true; onDone: root.uncover() }
    }
}
