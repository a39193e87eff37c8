// SPDX-License-Identifier: Apache-2.0
// Files that are read as far as a test says.
import QtQml

QtObject {
    property bool busy: false
    property string fileName: "drive.csv"
    property real share: 0.4
    property string progress: "3.4 of 8.5 MB"
    property var outcome: []
    property var fault: ({})
    property bool stopped: false
    property var places: [{ slug: "0", name: "Yard" }, { slug: "1", name: "Shore camp" }]
    property var roads: [{ slug: "unknown", name: "not known" }, { slug: "gravel", name: "gravel" }]
    property var trips: [{ slug: "t1", name: "To the coast, 14 January" }]
    property var begun: []

    function begin(kind: string, file: string, map: var) { begun = begun.concat([{ kind: kind, file: file, map: map }]) }
    function stop() { busy = false; stopped = true }
    function clear() { stopped = false }
}
