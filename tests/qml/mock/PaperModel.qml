// SPDX-License-Identifier: Apache-2.0
// A key on paper, step by step as tests ask; the words mean nothing.
import QtQml

QtObject {
    property bool busy: false
    property var fault: ({})
    property string step: ""
    property string words: ""
    property string mark: ""
    property bool compared: false
    property string rigName: "Matagouri"
    property var acts: []

    function invent(count: int): string {
        const out = [];
        for (let i = 0; i < count; i += 5)
            out.push(String(i + 1).padStart(3) + "  " + ["babad", "gomut", "lusab", "hofak", "dunom"].slice(0, Math.min(5, count - i)).join(" "));
        return out.join("\n");
    }
    function make() { acts = acts.concat(["make"]); words = invent(24); mark = invent(7); step = "written" }
    function recover(store: string, typed: string, mark: string) {
        acts = acts.concat(["recover " + [store, typed, mark].join("|")]);
        this.mark = invent(7); compared = mark !== ""; step = "owner";
    }
    function clear() { step = ""; words = ""; mark = ""; fault = {}; compared = false }
}
