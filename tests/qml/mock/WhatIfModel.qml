// SPDX-License-Identifier: Apache-2.0
// Three months on a coast, and what they would move.
import QtQml

QtObject {
    property bool busy: false
    property var legs: [{ title: "Shore camp", text: "1 December to 28 February; in the open; 4 000 km driven, road: gravel" }]
    property var places: [{ slug: "0", name: "Yard" }, { slug: "1", name: "Shore camp" }]
    property var roads: [{ slug: "unknown", name: "not known" }, { slug: "smooth", name: "smooth" }, { slug: "gravel", name: "gravel" }]
    property var problems: []
    property string sentence: "7 dates come sooner. One date goes later."
    property var rows: [{ point: "a", title: "Roof vents, lap sealant", dates: "2 February, as usual 27 March", moved: "1.7 months sooner: salt" },
        { point: "b", title: "Belly pan fasteners", dates: "3 May, as usual 28 May", moved: "0.8 months sooner: shaking on the road" }]
    property string firstDay: "2027-03-01"
    property string lastDay: "2027-03-31"
    property var sent: []

    function addLeg(leg: var): bool { sent = sent.concat([leg]); return true }
    function removeLeg(at: int) { legs = legs.filter((one, i) => i !== at) }
}
