// SPDX-License-Identifier: Apache-2.0
// The place that is open, and what its page's wishes lead to.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.Rig
import Snugwalk.Walk
import Snugwalk.Due
import Snugwalk.Logbook
import Snugwalk.Bench

FocusScope {
    id: root

    required property Main window
    readonly property Session session: root.window.session
    readonly property var pages: ({ rig: root.window.wide ? findings : rig, due: due, logbook: logbook, bench: bench,
        start: start, walk: walk, lines: lines, attention: attention, look_reasons: reasons, finish: finish,
        compare: compare, finding: finding, new_rig: setup, settings: settings, emergency: emergency })

    Loader {
        anchors.fill: parent
        focus: true
        sourceComponent: !root.session.loaded ? waiting
            : !root.session.hasRig && root.window.currentPlace !== "emergency" && root.window.currentPlace !== "settings" ? setup
            : root.pages[root.window.currentPlace] ?? rig
    }

    Component { id: waiting; BodyText { text: qsTr("Opening the logbook …"); quiet: true; padding: Tone.margin } }
    Component {
        id: rig
        RigPage {
            rig: root.session.rig
            footer: root.session.footer
            onOpened: id => root.window.go("finding", id)
            onSettingsAsked: root.window.go("settings", "")
        }
    }
    Component {
        id: findings
        Scroll {
            Item { implicitHeight: 10 }
            FindingList { rig: root.session.rig; Layout.fillWidth: true; onOpened: id => root.window.go("finding", id) }
        }
    }
    Component {
        id: setup
        SetupForm {
            first: !root.session.hasRig
            units: root.session.units
            problems: root.session.rigProblems
            onSent: map => root.session.addRig(map)
        }
    }
    Component { id: settings; SettingsPage { session: root.session; onNewRigAsked: root.window.go("new_rig", "") } }
    Component { id: emergency; EmergencyCard { card: root.session.emergency; onClosed: root.window.back() } }
    Component { id: start; StartSheet { rig: root.session.rig; onChosen: slug => root.session.walk.start(slug) } }
    Component {
        id: walk
        WalkPage {
            session: root.session
            drawn: !root.window.wide
            onAsked: place => root.window.go(place, "")
        }
    }
    Component { id: lines; LinesPage { walk: root.session.walk; onChosen: root.window.back() } }
    Component { id: attention; FindingSheet { session: root.session; onDone: root.window.back() } }
    Component { id: reasons; ReasonsPage { walk: root.session.walk; onDone: root.window.back() } }
    Component {
        id: finish
        FinishPage {
            walk: root.session.walk
            onLeft: { root.session.walk.stop(); root.window.trail = []; root.window.currentPlace = "rig" }
            onWentTo: root.window.go("walk", "")
        }
    }
    Component { id: due; DuePage { due: root.session.due } }
    Component { id: logbook; LogbookPage { book: root.session.book; onCompareAsked: root.window.go("compare", "") } }
    Component { id: compare; ComparePage { book: root.session.book } }
    Component { id: finding; HistoryPage { rig: root.session.rig; findingId: root.window.currentThing; onDone: root.window.back() } }
    Component { id: bench; BenchPage { bench: root.session.bench } }
}
