// SPDX-License-Identifier: Apache-2.0
// Two stores, three devices, something that waits.
import QtQml

QtObject {
    property bool busy: false
    property string busyWith: ""
    property string progress: ""
    property real done: 0
    property var outcome: ["12 entries sent, 3 received.", "2 photos sent.", "1 thing was written differently by two people."]
    property bool stopped: false
    property var fault: ({})
    property bool shared: true
    property bool owner: true
    property bool joining: false
    property string standing: "This device is enrolled as owner."
    property var waiting: ["12 entries wait to be sent.", "3 photos are still on another device.", "1 thing was written differently by two people."]
    property string mark: "14 wait"
    property var stores: [
        { name: "red-stick", where: "/media/usb/red-stick/snugwalk", kind: "folder", last: "last exchange 9 March 2027, 18:20", waits: "12 new entries since" },
        { name: "shed", where: "https://shed.example/files/rig", kind: "WebDAV address", last: "no exchange yet", waits: "140 entries to leave there" }]
    property var devices: [
        { id: "d1", name: "red phone (this device)", role: "owner", since: "since 12 January 2027", until: "", revoked: false, note: "", revocable: false },
        { id: "d2", name: "shed tablet", role: "technician", since: "since 3 February 2027", until: "until 31 March 2027", revoked: false, note: "", revocable: true },
        { id: "d3", name: "old laptop", role: "revoked", since: "since 12 January 2027", until: "", revoked: true, note: "left in a train", revocable: false }]
    property ShareModel share: ShareModel {}
    property ConflictsModel conflicts: ConflictsModel {}
    property PaperModel paper: PaperModel {}
    property CodeReader reader: CodeReader {}
    property var elsewhere: ["f1", "f2", "f3"]
    property string asked: ""
    property var acts: []

    signal storeAdded()

    function act(what: string) { acts = acts.concat([what]) }
    function ask(photo: string) { act("ask " + photo); asked = "3 originals come with the next exchange with a store that has them." }
    function exchangeNow(store: string, all: bool) { act("exchange " + store + (all ? " all" : "")); busyWith = store; progress = "files of entries: 12 of 30"; done = 0.4; outcome = [] }
    function stop() { act("stop"); busyWith = ""; stopped = true }
    function add(store: var) { act("add " + [store.name, store.kind, store.place, store.user, store.password, store.authority].join(" ")); storeAdded() }
    function remove(store: string) { act("remove " + store) }
    function revoke(device: string, reason: string) { act("revoke " + device + " " + reason) }
    function clear() { outcome = []; fault = {}; stopped = false }
}
