// SPDX-License-Identifier: Apache-2.0
// One mark that two people gave differently, and one entry set aside.
import QtQml

QtObject {
    property bool busy: false
    property var fault: ({})
    property bool mayAdopt: true
    property var conflicts: [{ key: "e1", title: "Mark: Roof vent sealant, 3 February 2027", versions: [
        { text: "mark: pass\nnote: smooth all round", who: "A.", device: "red phone", when: "3 February 2027, 17:40", shown: false },
        { text: "mark: attention\nnote: lifts at the rear corner", who: "B.", device: "shed tablet", when: "3 February 2027, 18:05", shown: true }] }]
    property var aside: [{ key: "s1/7", title: "Mend: replaced, 9 March 2027", detail: "what was done, in words: new regulator", who: "C.", when: "9 March 2027, 10:12", reason: "written after its device was revoked" }]
    property var acts: []

    function choose(key: string, index: int) { acts = acts.concat(["choose " + key + " " + index]) }
    function adopt(key: string) { acts = acts.concat(["adopt " + key]) }
    function clear() { fault = {} }
}
