// SPDX-License-Identifier: Apache-2.0
// Tread depth of one tire over seven walks, and one pressure without a limit.
import QtQml

QtObject {
    id: root

    property bool busy: false
    property string title: "Tread"
    property string when: "likely 4 August, from 2 June to 1 November"
    property var why: ["Last looked at on 12 March.", "You drive about 9 000 km a year, by your own seasons."]
    property string opened: ""
    property var rows: [
        { title: "Tread depth, wheel 1L", sentence: "4.1 mm on 12 March, 1.6 mm less a year. Likely to meet the limit about 4 August 2027, from 2 June to 1 November.", basis: "At least 3.5 mm: common practice",
            points: [[-700, 7.0], [-560, 6.4], [-430, 5.9], [-300, 5.3], [-210, 5.8], [-120, 4.6], [-20, 4.1]].map((p, i) => ({ day: p[0], value: p[1], leftOut: i === 4, date: ["2 May 2025", "19 Sep 2025", "27 Jan 2026", "6 Jun 2026", "4 Sep 2026", "3 Dec 2026", "12 Mar 2027"][i], text: p[1].toFixed(1) + " mm" })),
            before: [[-980, 3.6], [-840, 3.1]].map(p => ({ day: p[0], value: p[1], leftOut: false, date: "", text: "" })), low: 3.5, high: NaN, line: [{ day: -700, value: 7.0 }, { day: 145, value: 3.5 }], early: 82, likely: 145, late: 234,
            firstDay: -1000, lastDay: 260, least: 2.5, most: 7.5, ticks: [3, 4, 5, 6, 7].map(v => ({ value: v, text: v + " mm" })), dates: [[-800, "2025"], [-435, "2026"], [-70, "2027"]].map(d => ({ day: d[0], text: d[1] })), limits: [{ value: 3.5, text: "at least 3.5 mm" }],
            spoken: "Tread depth, wheel 1L: 7 readings from 7.0 mm to 4.1 mm; limit 3.5 mm" },
        { title: "Cold pressure, wheel 1L", sentence: "64 psi on 12 March. Too few readings for a line: three are wanted.", basis: "",
            points: [[-300, 65], [-20, 64]].map(p => ({ day: p[0], value: p[1], leftOut: false, date: "12 Mar 2027", text: p[1] + " psi" })), before: [], low: NaN, high: NaN, line: [], early: NaN, likely: NaN, late: NaN,
            firstDay: -320, lastDay: 20, least: 63.5, most: 65.5, ticks: [64, 65].map(v => ({ value: v, text: v + " psi" })), dates: [{ day: -200, text: "Sep" }, { day: -80, text: "Jan" }], limits: [], spoken: "Cold pressure, wheel 1L: 2 readings" }]

    function open(point: string) { opened = point }
}
