// SPDX-License-Identifier: Apache-2.0
// Colours, sizes and fonts: ink on paper, colour only for what needs hands.
pragma Singleton
import QtQuick

Item {
    id: root

    /// "day", "night" or "sun" (black on white, thicker strokes).
    property string theme: "day"
    /// Gloves raise every target and turn off whatever needs a swipe.
    property bool gloves: false
    /// Size of text, 1 to 2.
    property real textScale: 1
    /// Nothing moves: for pictures of the screens, and for people whom movement troubles.
    property bool still: false
    readonly property int slide: root.still ? 0 : 180

    readonly property bool night: root.theme === "night"
    readonly property bool sun: root.theme === "sun"

    readonly property color paper: root.night ? "#14171A" : "#FFFFFF"
    readonly property color ink: root.night ? "#E8EAED" : root.sun ? "#000000" : "#1B1F23"
    readonly property color quiet: root.night ? "#A9AFB5" : root.sun ? "#2B2B2B" : "#565B60"
    readonly property color line: root.night ? "#40474D" : root.sun ? "#000000" : "#C8CCD0"
    readonly property color band: root.night ? "#1F2428" : root.sun ? "#FFFFFF" : "#F3F5F6"

    // Okabe and Ito's palette (Color Universal Design, 2008); lightened at night, darkened in sun.
    readonly property color watch: root.night ? "#4FA8DC" : root.sun ? "#005A8F" : "#0072B2"
    readonly property color mend: root.night ? "#DE97C4" : root.sun ? "#A34D80" : "#CC79A7"
    readonly property color hold: root.night ? "#F07B2E" : root.sun ? "#B84A00" : "#D55E00"
    readonly property color unseen: root.night ? "#A9AFB5" : root.sun ? "#2B2B2B" : "#6B6B6B"
    readonly property color cautionPaper: root.night ? "#332B08" : root.sun ? "#F0E442" : "#FFF8D2"
    readonly property color cautionEdge: root.night ? "#E69F00" : root.sun ? "#000000" : "#E69F00"
    readonly property color cautionInk: root.night ? "#F6EFC4" : root.sun ? "#000000" : "#1B1F23"

    /// Least side of anything that can be touched, and least height of pass and attention.
    readonly property int target: root.gloves ? 64 : 48
    readonly property int markHeight: root.gloves ? 88 : 76
    readonly property real stroke: root.sun ? 3 : 2
    readonly property real hair: root.sun ? 2 : 1
    readonly property int gap: 8
    readonly property int margin: 16
    readonly property int corner: 6

    readonly property int title: root.px(28)
    readonly property int head: root.px(21)
    readonly property int body: root.px(17)
    readonly property int small: root.px(15)

    readonly property string words: "Atkinson Hyperlegible Next"
    readonly property string digits: "B612 Mono"

    function px(size: real): int { return Math.round(size * root.textScale) }

    // the Latin-1 cut alone: Qt takes one file a face, and the extended cut would hide it
    FontLoader { source: "fonts/atkinson-hyperlegible-next-latin-400-normal.woff2" }
    FontLoader { source: "fonts/atkinson-hyperlegible-next-latin-700-normal.woff2" }
    FontLoader { source: "fonts/B612Mono-Regular.otf" }
    FontLoader { source: "fonts/B612Mono-Bold.otf" }
}
