// SPDX-License-Identifier: Apache-2.0
// A question with every kind of field, picture, warning and act.
import QtQml

QtObject {
    id: root

    property bool busy: false
    property var subjects: [
        { slug: "tires", title: "Tires", questions: [{ slug: "tire-pressure", title: "Pressure for a load", about: "The cold pressure that carries what one tire carries" }, { slug: "tire-age", title: "Age", about: "" }] },
        { slug: "wheels", title: "Wheel torque", questions: [{ slug: "star", title: "Star order", about: "The order in which nuts are tightened" }] },
        { slug: "weights", title: "Weights", questions: [{ slug: "weigh", title: "Weighing", about: "From three tickets of a scale" }] }]
    property string question: "star"
    property string title: "Star order"
    property string about: "The order in which the nuts of a wheel are tightened"
    property var cautions: ["Chocks. Stands. Never under a jack, a steady or a slide.", "Maker's figure, checked wrench, dry studs."]
    property BenchInputModel inputs: BenchInputModel {}
    property string missing: ""
    property string problem: ""
    property var figures: [
        { label: "Clamp force of one stud", value: "46.3 kN", range: "32.4 to 60.2 kN, in 95 of 100 cases", basis: "computed", source: "VDI-2230" },
        { label: "To about a third", value: "40 N·m", range: "", basis: "common practice", source: "" }]
    property var lines: ["Snug in a star to about a third of the figure, wheel off the ground.", "Finish in a star with the wheel on the ground."]
    property var warnings: ["Lubricated studs: the same torque pulls them tighter by a third."]
    property string assumed: "Taken as usual: friction 0.20."
    property var pictures: [
        { kind: "star", studs: 6, sequence: [1, 4, 2, 5, 3, 6] },
        { kind: "weigh", figure: "Tongue weight", value: "310 kg", spoken: "Tongue weight: 310 kg",
            pads: [{ name: "tow vehicle, front axle", solo: "1,240 kg", coupled: "1,180 kg", bars: "1,215 kg" }, { name: "tow vehicle, rear axle", solo: "1,480 kg", coupled: "1,850 kg", bars: "1,790 kg" }, { name: "trailer's axles", solo: "", coupled: "2,470 kg", bars: "2,495 kg" }] },
        { kind: "bead", shape: "fillet", aspect: 0.8, widthText: "10 mm", heightText: "8 mm", lengthText: "3.2 m", spoken: "Section of the bead: 10 mm wide, 8 mm high, 3.2 m long" },
        { kind: "wheels", title: "Cold pressure", point: "tire-pressure", limits: "at least 448.2 kPa (maker's figure)", axles: 2, wheels: [
            { place: "wheel 1L", name: "wheel 1L", axle: 0, left: true, value: "452 kPa", date: "12 Mar 2027", out: false, told: "", spoken: "wheel 1L, 452 kPa", history: [{ label: "12 Mar 2027", value: "452 kPa" }, { label: "2 Mar 2027", value: "455 kPa" }] },
            { place: "wheel 1R", name: "wheel 1R", axle: 0, left: false, value: "401 kPa", date: "12 Mar 2027", out: true, told: "low", spoken: "wheel 1R, 401 kPa, low", history: [{ label: "12 Mar 2027", value: "401 kPa" }] },
            { place: "wheel 2L", name: "wheel 2L", axle: 1, left: true, value: "", date: "", out: false, told: "", spoken: "wheel 2L, no reading", history: [] },
            { place: "wheel 2R", name: "wheel 2R", axle: 1, left: false, value: "450 kPa", date: "12 Mar 2027", out: false, told: "", spoken: "wheel 2R, 450 kPa", history: [{ label: "12 Mar 2027", value: "450 kPa" }] }] }]
    property var keeping: ({ able: true, what: "Torque, on “Tightening of wheel nuts”", stands: "", places: [{ slug: "wheel 1L", name: "wheel 1L" }, { slug: "wheel 1R", name: "wheel 1R" }] })
    property var fitting: ({ places: [{ slug: "wheel 1L", name: "wheel 1L" }, { slug: "wheel 1R", name: "wheel 1R" }], point: "wheel-nut-torque", title: "Tightening of wheel nuts", when: "likely 14 Mar 2027, from 13 Mar 2027 to 20 Mar 2027", why: ["A wheel was fitted on 12 Mar 2027: look after 16 km."] })
    property var acts: []

    function open(question: string) { acts = acts.concat(["open " + question]) }
    function type(input: string, text: string) { acts = acts.concat(["type " + input + " " + text]) }
    function showExample() { acts = acts.concat(["example"]) }
    function clear() { acts = acts.concat(["clear"]) }
    function keep(place: string) { acts = acts.concat(["keep " + place]) }
    function noteWheelFitted(place: string) { acts = acts.concat(["fitted " + place]) }

    Component.onCompleted: inputs.rows = [
        ["studs", "Studs", "5 to 10", "number", [], "6", "", "", true],
        ["stud", "Thread of the studs", "", "words", [{ slug: "m12", name: "M12" }, { slug: "m14", name: "M14" }], "m14", "", "", true],
        ["torque", "Torque", "the maker's figure; without a unit: N·m", "number", [], "120 lb·ft", "120 lb·ft = 162.7 N·m", "", false],
        ["checked", "Checked on", "written as 2026-11-24", "date", [], "tomorrow", "", "Not a date. Write it as 2026-11-24.", false],
        ["wet", "Lubricated studs", "", "flag", [], "", "", "", false]
    ].map(p => ({ name: p[0], label: p[1], note: p[2], kind: p[3], wide: false, choices: p[4], typed: p[5], understood: p[6], problem: p[7], needed: p[8] }))
}
