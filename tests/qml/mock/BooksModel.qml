// SPDX-License-Identifier: Apache-2.0
// The logbooks of a device with an invented rig on offer.
import QtQml

QtObject {
    property bool demoOffered: true
    property bool hasDemo: true
    property bool isDemo: false
    property bool canRestore: true
    property string file: "/home/a/.local/share/snugwalk/logbook.snugwalk"
    property var known: [{ file: file, name: "logbook", current: true }, { file: "/home/a/.local/share/snugwalk/restored-1.snugwalk", name: "restored-1", current: false }]
    property bool busy: false
    property string step: ""
    property string outcome: "Copied with its photos: /media/stick/heron.snugwalk"
    property var asked: []

    function openDemo() { asked = asked.concat(["demo"]); step = "Making the invented rig: 12 of 74" }
    function leaveDemo(forget: bool) { asked = asked.concat([forget ? "leave and forget" : "leave"]) }
    function forgetDemo() { asked = asked.concat(["forget"]) }
    function openBook(file: string) { asked = asked.concat(["open " + file]) }
    function backUp(to: string) { asked = asked.concat(["back up " + to]) }
    function restore(from: string) { asked = asked.concat(["restore " + from]) }
}
