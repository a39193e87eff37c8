// SPDX-License-Identifier: Apache-2.0
// One point whose date sun and salt brought forward and an earlier look put back a little.
import QtQml

QtObject {
    property bool busy: false
    property string point: "roof-vent-sealant"
    property string title: "Roof vents, lap sealant"
    property string when: "likely 27 March, from 6 March to 4 May"
    property string band: "early 6 March, likely 27 March, late 4 May"
    property string sentence: "Likely in March 2027 instead of May 2027: 0.8 months sooner by sun, 0.6 months sooner by salt."
    property string aged: "The 120 days since 12 November 2026 aged it like 164."
    property var picture: ({ nominal: 56, likely: 15, early: -6, late: 53, firstDay: -12, lastDay: 62, nominalText: "7 May 2027", likelyText: "27 March 2027",
        steps: [["sunlight", "0.8 months sooner", 56, 32], ["salt", "0.6 months sooner", 32, 14], ["earlier looks and mends", "0.1 months later", 14, 17], ["shaking on the road", "0.1 months sooner", 17, 15]]
            .map(step => ({ name: step[0], text: step[1], from: step[2], to: step[3] })),
        ticks: [["Apr", 19], ["May", 49]].map(tick => ({ text: tick[0], day: tick[1] })), spoken: "The catalogue alone: 7 May. Sunlight: 0.8 months sooner. Likely: 27 March." })
    property var reasons: ["Last looked at on 12 November 2026.", "Every 6 months, counted from 12 November 2026."]
    property var facts: [{ label: "Interval", value: "every 6 months" }, { label: "What makes it due", value: "time, as it ages it" }, { label: "Rests on", value: "common practice" }, { label: "Time to look from", value: "6 March 2027" }]
    property var looks: [{ date: "12 November 2026", text: "pass, looked at, by A." }, { date: "3 February 2026", text: "sealed again, by B." }]
    property var sources: ["Common practice, no source: an editable default, never law"]
    property var weather: ["The weather is estimated from monthly normals, except for days with a record of their own.", "Days driven near or below freezing count as days on salted roads."]
    property bool hasReadings: true
    property string opened: "-"

    function open(point: string) { opened = point }
}
