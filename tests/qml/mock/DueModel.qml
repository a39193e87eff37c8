// SPDX-License-Identifier: Apache-2.0
// Seven bands and two stays, days from an invented today in mid March.
import QtQml

QtObject {
    property string sentence: "Five weeks on the coast road brought 11 points forward. Roof seals moved most: 41 days, by sun 23 and salt 18."
    property int pastDueCount: 1
    property int total: 9
    property bool busy: false
    property string moved: "11 points are due sooner than by the catalogue alone."
    property string zone: ""
    property string span: "all"
    property string order: "date"
    property var zones: [{ slug: "roof", name: "Roof" }, { slug: "underbody", name: "Belly pan and underbody" }]
    property int opens: 0
    property DueRowModel rows: DueRowModel {}
    property var months: ["Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec", "Jan", "Feb", "Mar", "Apr"].map((label, i) => ({ label: label, day: -42 + i * 30.4 }))
    property var stays: [{ name: "coast", fromDay: -30, toDay: 40, covered: false }, { name: "home, covered", fromDay: 41, toDay: 190, covered: true }]

    function open() { opens += 1 }

    Component.onCompleted: rows.rows = [
        ["Wheel bearings", -40, -12, 20, "past due 12 days", "", true], ["Roof vents, lap sealant", 6, 27, 60, "early April", "41 days sooner: sun, salt", false],
        ["Front cap seam", 15, 40, 78, "late April", "28 days sooner: sun", false], ["Wheel nuts", 30, 60, 100, "at 31 900 km", "", false],
        ["Belly pan fasteners", 50, 78, 140, "early June", "18 days sooner: gravel", false], ["Window seals", 96, 130, 186, "late July", "3 days sooner", false],
        ["Gas hoses, date", 130, 199, 199, "by 30 September", "date on the hose", false], ["Breakaway battery", NaN, NaN, NaN, "every time it moves", "", false],
        ["Water heater anode", 260, 330, 520, "next February", "", false]
    ].map(row => ({ point: row[0], title: row[0], zone: "Roof", early: row[1], likely: row[2], late: row[3], alert: row[1], nominal: row[2] + 20, earlyText: "5 March", likelyText: "27 March",
        lateText: "4 May", when: row[4], reason: row[5], pastDue: row[6], kind: isNaN(row[2]) ? "every_move" : "dated" }))
}
