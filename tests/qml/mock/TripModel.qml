// SPDX-License-Identifier: Apache-2.0
// A trip to an invented coast, with two stops and a measured road.
import QtQml

QtObject {
    property bool busy: false
    property string tripId: "t1"
    property string title: "To the coast"
    property string date: "14 January 2027, 08:10 to 16:45"
    property string note: "gravel after the pass"
    property string sentence: "9 days that aged the seals like 15; 412 km that shook like 1,310 km."
    property string doubt: "Seals: like 11 to 21 days; estimated from the place's usual weather or its records. Shake: like 900 km to 2,100 km; measured on the way."
    property var map: ({ width: 200, height: 150, track: [30, 30, 50, 42, 70, 60, 110, 66, 130, 90, 150, 112], stops: [{ x: 70, y: 60 }, { x: 130, y: 90 }], sea: true,
        land: [[-4, -4, 204, -4, 204, 60, 180, 80, 160, 115, 120, 140, 110, 154, -4, 154]], grid: [{ at: 60, text: "170° E", meridian: true }, { at: 140, text: "171° E", meridian: true }, { at: 75, text: "45° S", meridian: false }],
        scale: { length: 50, text: "50 km" }, dash: [4, 2], spoken: "Map of the trip, north up" })
    property var facts: [{ label: "Length", value: "412 km" }, { label: "Road", value: "middle 3.1 m/km, roughest tenth from 6.0 m/km on, over 371 km" }, { label: "Up and down", value: "1 840 m up, 2 010 m down" }]
    property var stops: [{ label: "1: 10:05", value: "25 min" }, { label: "2: 13:40", value: "1 h 10 min" }]
    property var roughness: ({ bars: [1.2, 1.4, 2.2, 3.8, 6.0, 5.1, 2.0].map((value, i) => ({ from: i * 51200, to: (i + 1) * 51200, value: value })), span: 409600, most: 6,
        ticks: [0, 2, 4, 6].map(value => ({ value: value, text: value.toString() })), edges: [1.5, 2.7], reach: [{ at: 0, text: "0 km" }, { at: 409600, text: "410 km" }],
        spoken: "Roughness along the way: 1.2 to 6.0 m/km, the roughest 205 km from where the log began." })
    property bool measured: true
    property string opened: "-"

    function open(trip: string) { opened = trip }
}
