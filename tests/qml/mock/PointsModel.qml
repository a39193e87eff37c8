// SPDX-License-Identifier: Apache-2.0
// Six points: of the catalogue, hidden, at an interval of the owner's, and one of the owner's own.
import QtQml

QtObject {
    id: root

    property string sentence: "138 points, 1 of your own, 1 hidden."
    property PointRowModel rows: PointRowModel {}
    property var stands: [{ slug: "nose", name: "Nose" }, { slug: "roof", name: "Roof" }, { slug: "underneath", name: "Underneath" }]
    property var zones: [{ slug: "roof", name: "Roof" }, { slug: "wheels", name: "Wheels and tires" }]
    property var consequences: [{ slug: "T", name: "the road" }, { slug: "W", name: "water gets in" }, { slug: "C", name: "comfort" }]
    property var acts: []

    signal added()

    function filter(words: string) { acts = acts.concat(["filter " + words]) }
    function hide(point: string) { acts = acts.concat(["hide " + point]) }
    function showAgain(point: string) { acts = acts.concat(["show " + point]) }
    function setEvery(point: string, months: string, distance: string) { acts = acts.concat(["every " + point + " " + months + " " + distance]) }
    function clearEvery(point: string) { acts = acts.concat(["clear " + point]) }
    function add(map: var) { acts = acts.concat([JSON.stringify(map)]); added() }

    Component.onCompleted: rows.rows = [
        ["roof-membrane", "Roof membrane", "every 3 months", "", false, false, false, "Roof"], ["vent-seals", "Vents, lap sealant", "every 2 months", "every 6 months in the catalogue", false, false, true, "Roof"],
        ["own-aerial", "Aerial mast", "every 12 months", "your own, A., 2 May 2026", false, true, false, "Roof"], ["spare", "Spare wheel", "every 6 months", "hidden by A., 3 May 2026", true, false, false, "Wheels and tires"],
        ["nuts", "Wheel nuts", "before each move", "", false, false, false, "Wheels and tires"]
    ].map(p => ({ point: p[0], title: p[1], every: p[2], note: p[3], isHidden: p[4], isOwn: p[5], hasOwnInterval: p[6], zone: p[7] }))
}
