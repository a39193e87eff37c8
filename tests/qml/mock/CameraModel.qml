// SPDX-License-Identifier: Apache-2.0
// A camera, and two photos that wait for their marks.
import QtQml

QtObject {
    property bool there: true
    property bool live: true
    property bool busy: false
    property bool hasTorch: false
    property bool torch: false
    property var waiting: ["image://photo/thumb/a", "image://photo/thumb/c"]
    property int away: 1
    property var acts: []

    signal taken(string file)
    signal frameChanged()

    function start() { acts = acts.concat(["start"]) }
    function stop() { acts = acts.concat(["stop"]) }
    function take() { acts = acts.concat(["take"]); taken("image://photo/thumb/d") }
    function keep(files: var) { acts = acts.concat(["keep"]) }
    function putAway(file: string) { waiting = waiting.filter(one => one !== file); away += 1 }
    function bringBack() { away = 0 }
}
