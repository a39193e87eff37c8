// SPDX-License-Identifier: Apache-2.0
// The whole of the models with an invented rig; tests change what they need.
import QtQml

QtObject {
    property bool loaded: true
    property bool hasRig: true
    property bool busy: false
    property bool still: true
    property string today: "12 March 2027"
    property string errorWhat: ""
    property string errorDo: ""
    property string units: "si"
    property string theme: "day"
    property bool gloves: false
    property string language: "en"
    property var languages: [{ slug: "en", name: "English" }, { slug: "es", name: "Español" }]
    property string person: "A."
    property real textScale: 1
    property bool canSound: true
    property bool canBuzz: true
    property bool sound: false
    property bool buzz: true
    property var rigs: [{ id: "r1", name: "Matagouri", current: true, archived: false }, { id: "r2", name: "Tussock", current: false, archived: false }, { id: "r3", name: "Totara", current: false, archived: true }]
    property var rigProblems: []
    property var emergency: ({ title: "Emergency",
        gas: "Gas smell or gas alarm: flames out if you are standing at them. Touch no switch, plug or phone inside. Everyone out, doors left open. Outside, shut the cylinder valve if you can reach it without going through the smell. Walk away upwind, then call: fire service, then a licensed gas fitter.",
        co: "CO alarm, headache, sleepiness: everyone out to fresh air first, then engine, heater and generator off from outside, call for medical help.",
        fire: "Fire: out, shut the door, call; fight it only with the exit behind you.",
        tingle: "Tingle from the skin: hands off, do not step in or out holding metal, breaker off at the post." })
    property string footer: "Not an official inspection. Says what A. looked at, when and how; what was not looked at is listed. Maker's figures, local law and licensed people decide."
    property PositionModel position: PositionModel {}
    property RigModel rig: RigModel {}
    property WalkModel walk: WalkModel {}
    property DueModel due: DueModel {}
    property BookModel book: BookModel {}
    property BooksModel books: BooksModel {}
    property BenchModel bench: BenchModel {}
    property TrendModel trends: TrendModel {}
    property SuppliesModel supplies: SuppliesModel {}
    property PointsModel points: PointsModel {}
    property CameraModel camera: CameraModel {}
    property DrawingModel drawing: DrawingModel {}
    property WhyModel why: WhyModel {}
    property WhatIfModel whatIf: WhatIfModel {}
    property TripModel trip: TripModel {}
    property MapModel map: MapModel {}
    property IntakeModel intake: IntakeModel {}
    property SyncModel sync: SyncModel {}
    property SearchModel search: SearchModel {}
    property LastActModel lastAct: LastActModel {}
    property ReportModel reports: ReportModel {}
    property PlotsModel plots: PlotsModel {}
    property var added: []

    signal rigAdded()
    signal photoTaken(url file)

    function clearError() { errorWhat = ""; errorDo = "" }
    function chooseRig(id: string) { rig.name = rigs.find(one => one.id === id).name }
    property var changed: []
    property var archivals: []
    function addRig(map: var) { added = added.concat([map]) }
    function changeRig(map: var) { changed = changed.concat([map]) }
    function archiveRig(id: string, archived: bool) { archivals = archivals.concat([[id, archived]]) }
    function takePhoto() { photoTaken("file:///photo.jpg") }
}
