// SPDX-License-Identifier: Apache-2.0
// A meeting of two devices, step by step as tests ask; the picture is invented and means nothing.
import QtQml

QtObject {
    property bool busy: false
    property var fault: ({})
    property string step: ""
    property var picture: []
    property string words: ""
    property string code: ""
    property string until: ""
    property string device: ""
    property string role: ""
    property string wanted: ""
    property string rigName: "Matagouri"
    property var roles: [
        { slug: "owner", name: "owner", about: "writes everything, enrolls and revokes devices" },
        { slug: "helper", name: "helper", about: "walks, marks and mends; decides no acceptance and no points" },
        { slug: "technician", name: "technician", about: "walks, reports and mends; licensed work only with a certificate number" },
        { slug: "viewer", name: "viewer", about: "reads everything, writes nothing" }]
    property var acts: []

    function invent(lines: int): string {
        const out = [];
        for (let i = 0; i < lines; ++i)
            out.push(String(5 * i + 1).padStart(3) + "  babad gomut lusab hofak dunom");
        return out.join("\n");
    }
    function pattern(): var {
        const rows = [];
        for (let y = 0; y < 53; ++y)
            rows.push(Array.from({ length: 53 }, (_, x) => (x * 7 + y * 13 + x * y) % 5 < 2 ? "1" : "0").join(""));
        return rows;
    }
    function show(next: string) { step = next; picture = pattern(); words = invent(17) }
    function offer(role: string, until: string) {
        acts = acts.concat(["offer " + role + " " + until]);
        this.role = role;
        this.until = "08:20";
        show("offer");
    }
    function takeAnswer(words: string) {
        acts = acts.concat(["take " + words]);
        device = "shed tablet"; wanted = "viewer"; code = "402\u00a0917"; step = "compare";
    }
    function confirm() { acts = acts.concat(["confirm"]); step = "enrolled" }
    function answer(words: string, role: string) { acts = acts.concat(["answer " + words + " " + role]); code = "402\u00a0917"; show("answered") }
    function showOffer() { offer("technician", "2027-03-31") }
    function showCompare() { showOffer(); takeAnswer("") }
    function showAnswer() { answer("", "helper") }
    function clear() { step = ""; fault = {}; code = ""; words = ""; picture = [] }
}
