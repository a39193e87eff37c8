// SPDX-License-Identifier: Apache-2.0
// A walk report of two pages, and what was asked of it.
import QtQml

QtObject {
    property bool busy: false
    property var kinds: [{ slug: "walk", name: "Walk report" }, { slug: "road_slip", name: "What was looked at before the road" }, { slug: "work_order", name: "Work order" }, { slug: "out_and_back", name: "Handing out and taking back" }]
    property var forms: [{ slug: "pdf", name: "PDF", filter: "PDF (*.pdf)" }, { slug: "html", name: "web page", filter: "web page (*.html)" }, { slug: "ics", name: "calendar", filter: "calendar (*.ics)" }]
    property string kind: "walk"
    property string sheet: "a4"
    property string place: "left_out"
    property bool ownData: false
    property var walks: kind === "walk" || kind === "out_and_back" ? [{ slug: "", name: "the last one" }, { slug: "b", name: "Full round, 12 Mar 2027" }, { slug: "a", name: "Before the road, 2 Jan 2027" }] : []
    property var others: []
    property var findings: kind === "work_order" ? [{ slug: "f1", name: "Belly pan: tear" }, { slug: "f2", name: "Roof sealant: crack" }] : []
    property string walk: ""
    property string other: ""
    property var chosen: []
    property bool hasSite: kind === "work_order"
    property var site: ({ access: "", power: "", key: "" })
    property var signers: kind === "out_and_back" ? [{ name: "Hands it over", signed: false }, { name: "Takes it", signed: true }] : []
    property bool isSigned: kind === "out_and_back"
    property var signatures: ({})
    property string title: "Walk report"
    property string words: "Walk report\nMatagouri, 12 March 2027\nNo hold among the 24 points looked at."
    property var pages: ["image://photo/page/a", "image://photo/page/d"]
    property int pageCount: 2
    property var fault: ({})
    property string saved: ""
    property int opened: 0
    property var written: []

    function open() { opened += 1 }
    function close() { opened -= 1 }
    function suggested(ending: string): string { return "file:///home/matagouri-walk." + ending }
    function save(ending: string, file: string) { written = written.concat([[ending, file]]); saved = "matagouri-walk." + ending }
    function setSite(part: string, text: string) { site = Object.assign({}, site, { [part]: text }) }
    function sign(line: int, strokes: var) { signatures = Object.assign({}, signatures, { [line]: strokes }) }
    function unsign(line: int) { signers = signers.map((one, i) => i === line ? { name: one.name, signed: false } : one) }
    function chooseWalk() { kind = "walk" }
}
