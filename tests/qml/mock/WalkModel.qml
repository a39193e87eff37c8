// SPDX-License-Identifier: Apache-2.0
// A full round under way, its third stand at hand. Acts are noted in `acts` for the tests.
import QtQml

QtObject {
    id: root

    property bool active: false
    property bool busy: false
    property string kindName: "Full round"
    property string standName: "Kerb side, wheels"
    property string standHelp: "Crouch beside the kerb side wheels. Then do the same wheels on the road side."
    property string standSlug: "kerb-wheels"
    property int count: tape.count
    property int current: 4
    property int linesLeft: 41
    property string progressText: "12 of 53 lines, 41 left"
    property bool complete: false
    property bool canUndo: true
    property bool grounded: true
    property int untold: 0
    property string selectedPoint: ""
    property TapeModel tape: TapeModel {}
    property string title: "Belly pan sheet and fasteners"
    property string look: "Torch from both sides, press up between the frames."
    property string passText: "No tear over 25 mm, no sag over 12 mm, every fastener home."
    property var points: [{ slug: "belly-pan", title: "Belly pan", look: "", pass: "", state: "not_looked" }]
    property var cautions: ["Chocks. Stands. Never under a jack, a steady or a slide."]
    property var cautionPanel: []
    property var readings: []
    property var openFindings: [{ id: "f2", number: 1, words: "rivet loose", grade: 3, gradeText: "6 mm gap", place: "4.5 m from the front", photo: "a", since: "12 January", kind: "mend", point: "belly-pan", status: "open", mended: "", grades: root.grades },
        { id: "f4", number: 2, words: "sealant cracked", grade: 2, gradeText: "hairline", place: "3.4 m from the front", photo: "b", since: "2 November", kind: "watch", point: "belly-pan", status: "mended", mended: "3 February", grades: root.grades }]
    property var defects: [{ slug: "loose", word: "loose" }, { slug: "missing", word: "missing" }, { slug: "bent", word: "bent" }, { slug: "crack", word: "cracked" }, { slug: "other", word: "something else" }]
    property var grades: [{ grade: 1, word: "dull or scuffed" }, { grade: 2, word: "one fastener working" }, { grade: 3, word: "fastener loose, sheet moves" }, { grade: 4, word: "fastener gone, sheet hangs" }, { grade: 5, word: "sheet torn through or about to drop" }]
    property var reasons: [{ slug: "risky_to_reach", text: "risky to reach today" }, { slug: "wet_or_icy", text: "wet or icy" }, { slug: "too_dark", text: "too dark" }, { slug: "blocked_by_goods", text: "goods in the way" }, { slug: "no_tool", text: "the tool is not here" }, { slug: "needs_licensed_person", text: "needs a licensed person" }, { slug: "no_time", text: "no time" }, { slug: "other", text: "another reason" }]
    property var usualReasons: root.reasons.slice(0, 4)
    property var lastTime: ({ mark: "pass", words: "last: looked, pass, 12 May 2026, A.", photo: "c" })
    property string decimalMark: "."
    property var acts: []

    signal marked(int line, string state)
    signal finished()
    signal started()
    signal refused(int line)
    signal undone()
    signal readingChecked(string slug, string place, bool understood, string message)

    function note(...words) { acts = acts.concat([words.join(" ")]) }
    function start(kind: string, minutes: int) { note("start", kind); active = true; started() }
    function goOn() { note("goOn"); active = true }
    function goTo(line: int) { note("goTo", line); current = line }
    function later() { note("later") }
    function stop() { note("stop"); active = false }
    function finish() { note("finish"); active = false; finished() }
    function undo() { note("undo") }
    function selectPoint(slug: string) { selectedPoint = slug }
    function cautionsRead() { note("cautionsRead"); cautionPanel = [] }
    function pass(how: string) { note("pass", how) }
    function notFitted() { note("notFitted") }
    function couldNotLook(reason: string, words: string) { note("couldNotLook", reason) }
    function setReading(slug: string, place: string, text: string) { note("setReading", slug, place, text); readingChecked(slug, place, true, text + " = 448.2 kPa") }
    function attention(map: var) { note("attention", JSON.stringify(map)) }

    /// A grouped line with a reading a wheel.
    function showWheels() {
        title = "Tires";
        points = [{ slug: "tire-pressure", title: "Pressure, cold", state: "pass" }, { slug: "tread", title: "Tread", state: "not_looked" }, { slug: "sidewall", title: "Sidewalls", state: "mend" }];
        readings = [{ point: "tire-pressure", slug: "cold-pressure", title: "Cold pressure", unit: "psi", units: ["psi", "kPa"], signed: false, fractions: false, places: ["wheel 1L", "wheel 1R", "wheel 2L", "wheel 2R"], placeNames: ["wheel 1L", "wheel 1R", "wheel 2L", "wheel 2R"],
            last: { "wheel 1L": "54.5 psi", "wheel 1R": "55.0 psi", "wheel 2L": "54.0 psi", "wheel 2R": "55.5 psi" }, limits: "55.1 psi at least", basis: "maker's figure", typed: { "wheel 1L": "55" } }];
        openFindings = [];
    }
    function showCautions() {
        cautionPanel = [{ code: "a", full: "A fall from a roof can kill. Set the ladder on firm ground, one out for four up, three rungs (about 1 m) above the edge. Not under power lines, not in wind, frost or dew; the cord is unplugged. Go onto a roof only where its maker rates it for a person, and then on boards, never on a rooflight; not knowing counts as no. A fixed ladder only within its plate and dry." },
            { code: "b", full: "Chock the wheels and set stands on the rated points. Never go under a rig held by a jack. Steadies, levelers and slide-outs are not stands, and nobody goes under a slide-out." }];
    }

    Component.onCompleted: tape.rows = [
        ["Nose and drawbar", "nose", "Nose", "pass", "nothing found"],
        ["Tread, 3 places, both tires", "kerb-wheels", "Kerb side, wheels", "pass", "5/32, 6/32"],
        ["Sidewalls by torch", "kerb-wheels", "Kerb side, wheels", "watch", "cracks at the rim"],
        ["Inner sidewall, rear tire", "kerb-wheels", "Kerb side, wheels", "could_not_look", "risky to reach today: mud"],
        ["Belly pan sheet and fasteners", "kerb-wheels", "Kerb side, wheels", "not_looked", ""],
        ["Pipes, wires and gas line: openings closed", "kerb-wheels", "Kerb side, wheels", "not_looked", ""],
        ["Springs, hangers, shackles, both sides", "kerb-wheels", "Kerb side, wheels", "not_looked", ""],
        ["Awning", "kerb-rear", "Kerb side, rear", "not_fitted", ""],
        ["Tail lamps", "rear", "Rear", "not_looked", ""]
    ].map((row, i) => ({ line: i, title: row[0], standSlug: row[1], standName: row[2], firstOfStand: [0, 1, 7, 8].indexOf(i) >= 0, mark: row[3],
        summary: row[4], pointCount: 1, hasCaution: false, pending: false }))
}
