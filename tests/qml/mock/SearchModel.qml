// SPDX-License-Identifier: Apache-2.0
// Three hits for any words.
import QtQml

QtObject {
    property bool busy: false
    property string words: "rivet"
    property var hits: [
        { kind: "finding", kindText: "finding", id: "f1", title: "Belly pan sheet: loose", part: "third rivet aft of the rear axle, 14 mm", date: "12 March 2027" },
        { kind: "mark", kindText: "note on a walk", id: "w1", title: "Roof membrane and its seams, looked at from the ladder", part: "", date: "2 February 2027" },
        { kind: "point", kindText: "point", id: "belly-pan-sheet", title: "Belly pan sheet", part: "Every rivet and every seam of it is seen from below.", date: "" }
    ]
    property var asked: []

    function find(words: string) { asked = asked.concat([words]) }
}
