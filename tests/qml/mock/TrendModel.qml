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
    property var values: [[7.0, 6.4, 5.9, 5.3, 5.8, 4.6, 4.1], [65, 64]]
    property var rows: [
        { title: "Tread depth, wheel 1L", sentence: "4.1 mm on 12 March, 1.6 mm less a year. Likely to meet the limit about 4 August 2027, from 2 June to 1 November.", basis: "At least 3.5 mm: common practice",
            points: values[0].map((v, i) => ({ leftOut: i === 4, date: ["2 May 2025", "19 Sep 2025", "27 Jan 2026", "6 Jun 2026", "4 Sep 2026", "3 Dec 2026", "12 Mar 2027"][i], text: v.toFixed(1) + " mm" })),
            before: [], spoken: "Tread depth, wheel 1L: 7 readings from 7.0 mm to 4.1 mm; limit 3.5 mm" },
        { title: "Cold pressure, wheel 1L", sentence: "64 psi on 12 March. Too few readings for a line: three are wanted.", basis: "",
            points: values[1].map(v => ({ leftOut: false, date: "12 Mar 2027", text: v + " psi" })), before: [], spoken: "Cold pressure, wheel 1L: 2 readings" }]

    function open(point: string) { opened = point }
    function picture(row: int, width: real, height: real, letter: real, stroke: real, family: string): var {
        if (!(width > 60))
            return ({});
        const list = values[row], least = Math.min(...list), most = Math.max(...list), line = letter * 1.3, left = letter * 2.4, top = line + letter, up = height - top - line - letter, across = width - left - letter;
        const x = i => left + across * (i + 0.5) / list.length, y = v => top + up * (1 - (v - least) / (most - least));
        return { width: width, height: height, letter: letter, lineHeight: line, left: left, top: top, across: across, up: up, xs: list.map((v, i) => x(i)),
            inks: [{ kind: "line", tone: "ink", xy: list.reduce((all, v, i) => all.concat([x(i), y(v)]), []), width: stroke, dash: [] }].concat(list.map((v, i) => ({ kind: "shape", shape: "dot", xy: [x(i), y(v)], size: letter * 0.6 }))),
            words: [{ x: 0, y: 0, width: 100, text: "Tread depth, mm", bold: false, quiet: true }, { x: 0, y: y(most) - line / 2, width: letter * 2, text: String(most), bold: false, quiet: true }] };
    }
}
