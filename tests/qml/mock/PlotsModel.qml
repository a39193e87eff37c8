// SPDX-License-Identifier: Apache-2.0
// Weathering of seven months laid out by hand, and what was asked of it.
import QtQml

QtObject {
    id: root

    property bool busy: false
    property var kinds: [["weathering", "Weathering by month"], ["shake", "Shake by month"], ["cost", "Cost by year"], ["concern", "Concern over time"], ["reading", "Readings over time"]].map(k => ({ slug: k[0], name: k[1] }))
    property string kind: "weathering"
    property var subjects: [{ slug: "", name: "the worst of the rig" }, { slug: "c1", name: "Belly pan sheet: loose" }]
    property string subject: ""
    property bool all: false
    property bool hasMore: true
    property int which: 0
    property int serial: 1
    property var forms: [{ slug: "png", name: "picture, PNG", filter: "PNG (*.png)" }, { slug: "svg", name: "drawing, SVG", filter: "SVG (*.svg)" }, { slug: "csv", name: "table, CSV", filter: "CSV (*.csv)" }]
    property var fault: ({})
    property string saved: ""
    property string opened: ""
    property int closed: 0
    property var written: []
    readonly property var months: ["October 2026", "November 2026", "December 2026", "January 2027", "February 2027", "March 2027", "April 2027"]
    readonly property var aged: [28, 34, 43, 47, 39, 33, 22]
    property var plots: [{ slug: "weathering", title: "Weathering by month", about: "Roof vent sealant: 212 days aged it like 246.", notes: ["A month's rate is the one that due dates go by. Whisker: early to late of the estimate."], empty: "", head: ["Month", "Days", "Aged like, days", "Range"],
        rows: months.map((m, i) => ({ cells: [m, "30", String(aged[i]), (aged[i] - 8) + " to " + (aged[i] + 9)], words: m + ": Days 30, Aged like, days " + aged[i] + ", Range " + (aged[i] - 8) + " to " + (aged[i] + 9) })) }]

    function open(thing: string) { opened = thing }
    function close() { closed += 1 }
    function suggested(ending: string): string { return "file:///home/matagouri-weathering." + ending }
    function save(ending: string, file: string) { written = written.concat([[ending, file]]); saved = "matagouri-weathering." + ending }
    function picture(width: real, height: real, letter: real, stroke: real, family: string): var {
        if (!(width > 60))
            return ({});
        const line = letter * 1.3, left = letter * 2.2, top = line + letter, up = height - top - line - letter, across = width - left - letter;
        const bar = across / 7, y = v => top + up * (1 - v / 60), inks = [], words = [];
        for (const v of [0, 20, 40, 60]) {
            inks.push({ kind: "line", tone: "faint", xy: [left, y(v), left + across, y(v)], width: 1, dash: [] });
            words.push({ x: left - letter * 1.7, y: y(v) - line / 2, width: letter * 1.2, text: String(v), bold: false, quiet: true });
        }
        aged.forEach((v, i) => {
            const x = left + i * bar + bar * 0.15, w = bar * 0.7;
            inks.push({ kind: "line", tone: "ink", xy: [x, y(0), x, y(v), x + w, y(v), x + w, y(0), x, y(0)], width: stroke, dash: [] });
            inks.push({ kind: "line", tone: "ink", xy: [x + w / 2, y(v - 8), x + w / 2, y(v + 9)], width: stroke, dash: [] });
        });
        inks.push({ kind: "shape", shape: "ring", xy: [left + bar / 2, y(50)], size: letter });
        words.push({ x: 0, y: 0, width: 100, text: "days of ageing", bold: false, quiet: true });
        words.push({ x: left + across * 0.5, y: y(58), width: 60, text: "days", bold: true, quiet: false });
        words.push({ x: left, y: top + up + letter * 0.4, width: 60, text: "Oct", bold: false, quiet: true });
        words.push({ x: left + across - letter * 2.5, y: top + up + letter * 0.4, width: 60, text: "Apr", bold: false, quiet: true });
        return { width: width, height: height, letter: letter, lineHeight: line, left: left, top: top, across: across, up: up, inks: inks, words: words, xs: aged.map((v, i) => left + (i + 0.5) * bar) };
    }
}
