// SPDX-License-Identifier: Apache-2.0
// The window. Knows which place is open and the way back; every page gets its own controller.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.Rig

Window {
    id: root

    required property Session session
    /// "rig", "due", "logbook", "bench", "bench_question", "start", "walk", "lines", "attention", "look_reasons", "finish",
    /// "compare", "finding", "draw", "camera", "trend", "state", "accept", "points", "add_point", "supplies", "why",
    /// "what_if", "trip", "map", "import", "search", "reports", "went", "sync", "share", "join", "recover", "paper", "conflicts", "new_rig", "edit_rig", "settings",
    /// "about" or "emergency".
    property string currentPlace: "rig"
    /// What the place is about: a finding's id on "finding", a photo on "draw", a question; "" is the first there is.
    property string currentThing: ""

    readonly property bool loaded: root.session.loaded
    readonly property bool hasRig: root.session.hasRig
    /// A tablet has the drawing and the place side by side also upright; larger words ask for more width.
    readonly property bool wide: root.width >= 780 * Math.max(1, root.session.textScale * 0.75)
    readonly property bool walking: /^(walk|lines|attention|look_reasons|finish|camera)$/.test(root.currentPlace)
    readonly property bool home: /^(rig|due|logbook|bench)$/.test(root.currentPlace)
    readonly property bool alone: !root.session.hasRig || root.currentPlace === "new_rig" || root.currentPlace === "edit_rig" || root.currentPlace === "emergency"
    property var trail: []

    function go(place: string, thing: string) {
        if (place === root.currentPlace && thing === root.currentThing)
            return;
        root.trail = root.trail.concat([{ place: root.currentPlace, thing: root.currentThing }]).slice(-12);
        root.currentThing = thing;
        root.currentPlace = place;
    }
    function back() {
        if (view.uncover())
            return;
        const last = root.trail.length ? root.trail[root.trail.length - 1] : { place: root.session.walk.active ? "walk" : "rig", thing: "" };
        root.trail = root.trail.slice(0, -1);
        root.currentThing = last.thing;
        root.currentPlace = last.place;
    }
    function goHome() {
        root.trail = [];
        root.currentPlace = "rig";
    }
    function walkOn() {
        if (root.session.rig.walkOpen)
            root.session.walk.goOn();
        root.go(root.session.rig.walkOpen ? "walk" : "start", "");
    }
    function begin() {
        root.currentPlace = !root.session.hasRig ? "new_rig" : root.session.walk.active ? "walk" : "rig";
    }

    width: 412
    height: 892
    minimumWidth: 320
    minimumHeight: 480
    visible: true
    color: Tone.paper
    title: root.session.rig.name === "" ? "Snugwalk" : root.session.rig.name

    Component.onCompleted: if (root.session.loaded) root.begin()
    onLoadedChanged: if (root.loaded) root.begin()
    // a first rig that came from a store: the way back no longer leads to its form
    onHasRigChanged: root.trail = []
    Connections {
        target: root.session
        function onRigAdded() { root.goHome() }
    }
    Connections {
        target: root.session.walk
        function onStarted() { root.currentPlace = "walk" }
        function onFinished() { root.goHome() }
    }
    Binding { target: Tone; property: "theme"; value: root.session.theme }
    Binding { target: Tone; property: "gloves"; value: root.session.gloves }
    Binding { target: Tone; property: "textScale"; value: root.session.textScale }
    Binding { target: Tone; property: "still"; value: root.session.still }
    Binding { target: Format; property: "language"; value: root.session.language }
    Binding { target: Format; property: "units"; value: root.session.units }
    Binding { target: Drawn; property: "on"; value: root.session.drawing.drawn }

    Shortcut { sequence: "Escape"; enabled: !root.home; onActivated: root.back() }
    Shortcut { sequence: "E"; enabled: root.currentPlace !== "emergency"; onActivated: root.go("emergency", "") }

    Column {
        id: told
        anchors { left: parent.left; right: parent.right; top: parent.top }
        Once {
            wanted: root.session.books.isDemo && !root.walking && root.currentPlace !== "emergency"
            DemoBand { books: root.session.books; width: told.width; height: implicitHeight }
        }
    }
    RowLayout {
        anchors { left: parent.left; right: parent.right; top: told.bottom; bottom: parent.bottom }
        spacing: 0
        LayoutMirroring.enabled: Format.locale.textDirection === Qt.RightToLeft
        LayoutMirroring.childrenInherit: true

        Once {
            wanted: root.wide && !root.alone
            ColumnLayout {
                spacing: 0
                Layout.fillHeight: true
                Layout.preferredWidth: Math.round(root.width * 0.46)
                Layout.maximumWidth: Layout.preferredWidth
                RigPage {
                    rig: root.session.rig
                    listed: false
                    stand: root.walking ? root.session.walk.standSlug : ""
                    footer: root.session.footer
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    onOpened: id => root.go("finding", id)
                    onSettingsAsked: root.go("settings", "")
                    onWhyAsked: root.go("state", "")
                    onEditAsked: root.go("edit_rig", "")
                }
                HomeBar { visible: !root.walking; emergency: false; Layout.fillWidth: true }
            }
        }
        Rectangle { visible: root.wide && !root.alone; color: Tone.ink; Layout.preferredWidth: Tone.hair; Layout.fillHeight: true }
        ColumnLayout {
            spacing: 0
            PlaceHost {
                id: view
                session: root.session
                place: root.currentPlace
                thing: root.currentThing
                wide: root.wide
                Layout.fillWidth: true
                Layout.fillHeight: true
                onWent: (place, thing) => root.go(place, thing)
                onBackAsked: root.back()
                onHomeAsked: root.goHome()
            }
            ErrorLine {
                what: root.session.errorWhat
                act: root.session.errorDo
                Layout.fillWidth: true
                onRead: root.session.clearError()
            }
            HomeBar { visible: root.home && !root.wide && !root.alone; Layout.fillWidth: true }
            PageFoot {
                visible: root.currentPlace !== "emergency" && root.currentPlace !== "walk" && (root.wide || !root.session.hasRig || !root.home)
                backable: !root.home && (root.session.hasRig || root.trail.length > 0)
                Layout.fillWidth: true
                onBack: root.back()
                onEmergencyAsked: root.go("emergency", "")
            }
        }
    }

    component HomeBar: PlaceBar {
        place: root.currentPlace
        barTitle: root.session.rig.barTitle
        barDetail: root.session.rig.barDetail
        waiting: root.session.sync.mark
        onPlaceAsked: place => root.go(place, "")
        onWalkAsked: root.walkOn()
        onEmergencyAsked: root.go("emergency", "")
    }
}
