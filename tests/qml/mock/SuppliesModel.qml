// SPDX-License-Identifier: Apache-2.0
// Three items of a shopping list.
import QtQml

QtObject {
    property bool busy: false
    property int days: 90
    property var cautions: ["Dry, three rungs over, phone away."]
    property var rows: [
        { item: "lap-sealant", name: "Lap sealant, self-levelling", get: "2 cartridges", needed: "410 mL needed, none on hand", onHand: "not counted yet", uses: ["Lap sealant, middle vent: crack 60 mm", "Front cap seam: hairline, 90 mm (length taken from the rig's width)"] },
        { item: "rivets", name: "Blind rivets", get: "1 box", needed: "12 needed, 3 on hand", onHand: "3, counted 2 May 2026", uses: ["Belly pan sheet and fasteners: loose"] },
        { item: "grease", name: "Wheel bearing grease", get: "nothing", needed: "320 g needed, 400 g on hand", onHand: "400 g, counted 2 May 2026", uses: ["Wheel bearings, due"] }]
    property var counted: []
    function open(span: int) { days = span }
    function setOnHand(item: string, amount: string) { counted = counted.concat([[item, amount]]) }
}
