// SPDX-License-Identifier: Apache-2.0
// Every place but the home, and what its page's wishes lead to. `PlaceHost` makes it once the home is drawn.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.Photo
import Snugwalk.Rig
import Snugwalk.Walk
import Snugwalk.Due
import Snugwalk.Logbook
import Snugwalk.Map
import Snugwalk.Bench
import Snugwalk.Sync

FocusScope {
    id: root

    required property Session session
    required property string place
    required property string thing
    /// Whether the drawing of the rig stands beside this.
    required property bool wide
    signal went(string place, string thing)
    signal backAsked()
    signal homeAsked()

    /// The page shown: without a rig there is only its form, and what must always be at hand.
    readonly property string page: !root.session.hasRig && !/^(emergency|settings|about|sync|join|recover)$/.test(root.place) ? "new_rig" : root.place

    /// Takes away what lies over the page; false when nothing does.
    function uncover(): bool {
        const page = sheet.itemAt(0) as FindingSheet;
        if (!page?.covered)
            return false;
        page.uncover();
        return true;
    }

    focus: true

    Once {
        wanted: root.page === "new_rig"
        SetupForm {
            anchors.fill: root
            first: !root.session.hasRig
            units: root.session.units
            fittingChoices: Array.from(root.session.rig.fittings)
            usual: (kind, practice) => root.session.rig.usualFittings(kind, practice)
            draftOf: map => root.session.rig.draft(map, false)
            // as it was when the form opened: the first letter typed is a name already
            Component.onCompleted: asksWho = root.session.person === "" && !root.session.hasRig
            demoOffered: root.session.books.demoOffered
            canRestore: root.session.books.canRestore
            waiting: root.session.books.step
            problems: Array.from(root.session.rigProblems)
            onSent: map => root.session.addRig(map)
            onJoinAsked: root.went("sync", "")
            onDemoAsked: root.session.books.openDemo()
            onRestoreAsked: file => root.session.books.restore(file)
            onPersonTyped: name => root.session.person = name
            onUnitsPicked: slug => root.session.units = slug
        }
    }
    Once {
        wanted: root.page === "edit_rig"
        SetupForm {
            anchors.fill: root
            first: false
            step: 1
            known: root.session.rig.formTexts()
            units: root.session.units
            fittingChoices: Array.from(root.session.rig.fittings)
            usual: (kind, practice) => root.session.rig.usualFittings(kind, practice)
            draftOf: map => root.session.rig.draft(map, true)
            problems: Array.from(root.session.rigProblems)
            onSent: map => root.session.changeRig(map)
            onUnitsPicked: slug => root.session.units = slug
        }
    }
    Once { wanted: root.page === "about"; AboutPage { anchors.fill: root; footer: root.session.footer } }
    Once {
        wanted: root.page === "settings"
        SettingsPage { anchors.fill: root; session: root.session; onNewRigAsked: root.went("new_rig", ""); onPointsAsked: root.went("points", ""); onSyncAsked: root.went("sync", ""); onAboutAsked: root.went("about", "") }
    }
    Once {
        wanted: root.page === "emergency"
        EmergencyCard { anchors.fill: root; card: root.session.emergency; onClosed: root.backAsked() }
    }
    Once {
        wanted: root.page === "start"
        StartSheet { anchors.fill: root; rig: root.session.rig; onChosen: (slug, minutes) => root.session.walk.start(slug, minutes) }
    }
    Once {
        wanted: root.page === "walk"
        WalkPage { anchors.fill: root; session: root.session; drawn: !root.wide; onAsked: place => root.went(place, ""); onPhotoAsked: photo => root.went("draw", photo); onTrendAsked: point => root.went("trend", point) }
    }
    Once {
        wanted: root.page === "lines"
        LinesPage { anchors.fill: root; walk: root.session.walk; onChosen: root.backAsked() }
    }
    Once {
        id: sheet
        wanted: root.page === "attention"
        FindingSheet { anchors.fill: root; session: root.session; drawn: !root.wide; onDone: root.backAsked() }
    }
    Once {
        wanted: root.page === "look_reasons"
        ReasonsPage { anchors.fill: root; walk: root.session.walk; onDone: root.backAsked() }
    }
    Once {
        wanted: root.page === "finish"
        FinishPage {
            anchors.fill: root
            walk: root.session.walk
            onWentTo: root.went("walk", "")
            onLeftOpen: { root.session.walk.stop(); root.homeAsked() }
        }
    }
    Once { wanted: root.page === "due"; DuePage { anchors.fill: root; due: root.session.due; fresh: root.session.rig.fresh && !root.session.rig.walkOpen; onStartAsked: root.went("start", ""); onOpened: point => root.went("why", point); onSuppliesAsked: root.went("supplies", ""); onWhatIfAsked: root.went("what_if", ""); onWentAsked: root.went("went", "") } }
    Once { wanted: root.page === "why"; WhyPage { anchors.fill: root; why: root.session.why; point: root.thing; onTrendAsked: point => root.went("trend", point); onWhatIfAsked: root.went("what_if", "") } }
    Once { wanted: root.page === "what_if"; WhatIfPage { anchors.fill: root; whatIf: root.session.whatIf; onOpened: point => root.went("why", point) } }
    Once {
        wanted: root.page === "logbook"
        LogbookPage { anchors.fill: root; book: root.session.book; waiting: root.session.sync.mark; lastAct: root.session.lastAct.what; Component.onCompleted: root.session.lastAct.look(); onTakenBack: root.session.lastAct.takeBack(); onReportsAsked: root.went("reports", ""); onWentAsked: root.went("went", ""); onSearchAsked: root.went("search", ""); onMapAsked: root.went("map", ""); onExchangeAsked: root.went("sync", ""); onCompareAsked: root.went("compare", ""); onPhotoAsked: photo => root.went("draw", photo); onTripAsked: trip => root.went("trip", trip); onImportAsked: root.went("import", "") }
    }
    Once { wanted: root.page === "search"; SearchPage { anchors.fill: root; search: root.session.search; onOpened: (kind, id) => root.went(kind === "point" ? "why" : kind === "stay" ? "map" : kind, id) } }
    Once { wanted: root.page === "trip"; TripPage { anchors.fill: root; trip: root.session.trip; tripId: root.thing; onImportAsked: what => root.went("import", what) } }
    Once { wanted: root.page === "map"; MapPage { anchors.fill: root; map: root.session.map; thing: root.thing; onOpened: (kind, id) => root.went(kind, id); onImportAsked: root.went("import", "track") } }
    Once { wanted: root.page === "import"; ImportPage { anchors.fill: root; intake: root.session.intake; wish: root.thing } }
    Once {
        wanted: root.page === "sync"
        SyncPage { anchors.fill: root; sync: root.session.sync; hasRig: root.session.hasRig; onShareAsked: root.went("share", ""); onJoinAsked: root.went("join", ""); onConflictsAsked: root.went("conflicts", ""); onPaperAsked: root.went("paper", "") }
    }
    Once { wanted: root.page === "share"; SharePage { anchors.fill: root; sync: root.session.sync; camera: root.session.camera; onDone: root.backAsked() } }
    Once { wanted: root.page === "join"; JoinPage { anchors.fill: root; sync: root.session.sync; camera: root.session.camera; onDone: root.backAsked(); onRecoverAsked: root.went("recover", "") } }
    Once { wanted: root.page === "paper"; PaperPage { anchors.fill: root; sync: root.session.sync; onDone: root.backAsked() } }
    Once { wanted: root.page === "recover"; RecoverPage { anchors.fill: root; sync: root.session.sync; onDone: root.went("sync", "") } }
    Once { wanted: root.page === "conflicts"; ConflictsPage { anchors.fill: root; conflicts: root.session.sync.conflicts } }
    Once { wanted: root.page === "reports"; ReportsPage { anchors.fill: root; reports: root.session.reports; kind: root.thing } }
    Once { wanted: root.page === "went"; WentPage { anchors.fill: root; plots: root.session.plots; thing: root.thing } }
    Once { wanted: root.page === "compare"; ComparePage { anchors.fill: root; book: root.session.book } }
    Once {
        wanted: root.page === "finding"
        HistoryPage { anchors.fill: root; rig: root.session.rig; findingId: root.thing; onDone: root.backAsked(); onMapAsked: id => root.went("map", id); onPhotoAsked: photo => root.went("draw", photo) }
    }
    Once { wanted: root.page === "draw"; DrawPage { anchors.fill: root; drawing: root.session.drawing; sync: root.session.sync; photo: root.thing } }
    Once { wanted: root.page === "camera"; CameraPage { anchors.fill: root; camera: root.session.camera; plain: true } }
    Once { wanted: root.page === "trend"; TrendPage { anchors.fill: root; trends: root.session.trends; point: root.thing } }
    Once {
        wanted: root.page === "state"
        StatePage { anchors.fill: root; rig: root.session.rig; onOpened: id => root.went("finding", id); onAcceptAsked: point => root.went("accept", point) }
    }
    Once { wanted: root.page === "accept"; AcceptPage { anchors.fill: root; session: root.session; point: root.thing; onDone: root.backAsked() } }
    Once { wanted: root.page === "points"; PointsPage { anchors.fill: root; points: root.session.points; onAddAsked: root.went("add_point", "") } }
    Once { wanted: root.page === "add_point"; AddPointPage { anchors.fill: root; points: root.session.points; onDone: root.backAsked() } }
    Once { wanted: root.page === "supplies"; SuppliesPage { anchors.fill: root; supplies: root.session.supplies } }
    Once { wanted: root.page === "bench"; BenchPage { anchors.fill: root; bench: root.session.bench; onOpened: question => root.went("bench_question", question) } }
    Once {
        wanted: root.page === "bench_question"
        QuestionPage { anchors.fill: root; bench: root.session.bench; question: root.thing; onTrendAsked: point => root.went("trend", point); onWhyAsked: point => root.went("why", point) }
    }
}
