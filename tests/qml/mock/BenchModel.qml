// SPDX-License-Identifier: Apache-2.0
// The tire pressure computation with the placard typed in.
import QtQml

QtObject {
    property string caution: "Maker's figure, checked gauge, cold tires. Never over what tire or wheel allow."
    property string problem: ""
    property var typed: ({ placard: "65 psi", maxPressure: "80 psi", temperatureNow: "20 °C", temperatureColdest: "-10 °C" })
    property var results: [
        { label: "Set now", value: "74.0 psi", range: "510 kPa; 73.4 to 74.6", basis: "computed", source: "placard 65 psi at the coldest start", warnings: [] },
        { label: "Pressure now, told for the coldest start", value: "66.1 psi", range: "", basis: "computed", source: "", warnings: ["Read warm: this shows only that it is not low."] }]
    property var sets: []
    function set(name: string, text: string) { sets = sets.concat([name + " " + text]) }
}
