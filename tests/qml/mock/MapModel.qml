// SPDX-License-Identifier: Apache-2.0
// A map of an invented coast with a trip, a stay and some findings; what was asked is kept.
import QtQml

QtObject {
    property bool busy: false
    property bool empty: false
    property var wishes: [{ slug: "findings", name: "findings", on: true }, { slug: "past", name: "mended ones too", on: true }, { slug: "trips", name: "trips", on: true }, { slug: "stays", name: "stays", on: true }]
    property var members: []
    property var sheet: ({ width: 360, height: 500, over: 0.25, sea: true, coast: true, names: true,
        land: [[-90, -125, 450, -125, 450, 300, 330, 420, 250, 520, 180, 625, -90, 625]],
        grid: [{ at: 140, text: "170° E", meridian: true }, { at: 290, text: "171° E", meridian: true }, { at: 180, text: "45° S", meridian: false }],
        lines: [{ points: [60, 90, 100, 140, 150, 160, 180, 250, 230, 330], dash: [4, 2] }],
        groups: [{ x: 60, y: 90, shape: "hold", count: 1, spoken: "Belly pan sheet: loose, open, 12 March 2027", kind: "finding", id: "f1" },
            { x: 230, y: 330, shape: "watch", count: 4, spoken: "4 things here, first: Roof vent: cracked, open, 2 February 2027", kind: "finding", id: "f2" },
            { x: 150, y: 220, shape: "stay", count: 1, spoken: "Willow ground, 1 March 2027 to 4 March 2027", kind: "stay", id: "s1" }],
        labels: [{ x: 120, y: 60, left: 125, top: 50, width: 70, height: 20, text: "Twizel" }, { x: 250, y: 260, left: 180, top: 250, width: 65, height: 20, text: "Ōmarama" }],
        scale: { length: 90, text: "50 km" }, spoken: "Map, north up; its middle is 7 km north of Twizel. 200 km across." })
    property var asked: []
    property string trip: ""

    function open(thing: string) { asked = asked.concat([["open", thing]]) }
    function fit(width: real, height: real, target: real, letter: real) { }
    function move(across: real, down: real) { asked = asked.concat([["move", Math.round(across), Math.round(down)]]) }
    function zoom(factor: real, x: real, y: real) { asked = asked.concat([["zoom", factor]]) }
    function whole() { asked = asked.concat([["whole"]]) }
    function wish(slug: string, on: bool) { asked = asked.concat([["wish", slug, on]]) }
    function choose(group: int) {
        asked = asked.concat([["choose", group]]);
        members = group < 0 ? [] : [{ kind: "finding", shape: "watch", id: "f2", title: "Roof vent: cracked", detail: "open, 2 February 2027" }, { kind: "finding", shape: "past", id: "f3", title: "Window seal: lifted", detail: "mended, 2 January 2027" }, { kind: "trip", shape: "end", id: "t1", title: "To the coast", detail: "14 January 2027" }, { kind: "stay", shape: "stay", id: "s2", title: "A stay", detail: "since 2 March 2027" }];
    }
    function close() { asked = asked.concat([["close"]]) }
    function lookCloser() { asked = asked.concat([["closer"]]); members = [] }
    function tripAt(x: real, y: real): string { return trip }
}
