// SPDX-License-Identifier: Apache-2.0
// Colours keep the contrast that WCAG 2.2 asks for, computed by its own formula.
import QtQuick
import QtTest
import Snugwalk.Style

TestCase {
    name: "Tone"

    // WCAG 2.2, definitions "relative luminance" and "contrast ratio"
    function part(c: real): real { return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4) }
    function luminance(c: color): real { return 0.2126 * part(c.r) + 0.7152 * part(c.g) + 0.0722 * part(c.b) }
    function contrast(a: color, b: color): real {
        const x = luminance(a), y = luminance(b);
        return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
    }

    function init() { failOnWarning(/.?/) }
    function cleanup() { Tone.theme = "day"; Tone.gloves = false; Tone.textScale = 1 }

    function test_formulaAgreesWithItsOwnExamples() {
        // WCAG 2.2: black on white is 21:1; interface.md: #0072B2 on white 5.2, #D55E00 3.9, #CC79A7 3.1
        fuzzyCompare(contrast(Qt.color("#000000"), Qt.color("#FFFFFF")), 21, 0.001);
        fuzzyCompare(contrast(Qt.color("#0072B2"), Qt.color("#FFFFFF")), 5.2, 0.05);
        fuzzyCompare(contrast(Qt.color("#D55E00"), Qt.color("#FFFFFF")), 3.9, 0.05);
    }
    function test_textIsReadable_data() {
        return [{ tag: "day", least: 4.5 }, { tag: "night", least: 4.5 }, { tag: "sun", least: 7 }];
    }
    function test_textIsReadable(data) {
        Tone.theme = data.tag;
        const pairs = [[Tone.ink, Tone.paper], [Tone.quiet, Tone.paper], [Tone.ink, Tone.band], [Tone.quiet, Tone.band], [Tone.cautionInk, Tone.cautionPaper], [Tone.unseen, Tone.paper]];
        for (const pair of pairs)
            verify(contrast(pair[0], pair[1]) >= (pair[0] === Tone.unseen ? 4.5 : data.least), data.tag + " " + pair + " " + contrast(pair[0], pair[1]));
    }
    function test_shapesStandOut_data() { return [{ tag: "day" }, { tag: "night" }, { tag: "sun" }] }
    function test_shapesStandOut(data) {
        Tone.theme = data.tag;
        for (const fill of [Tone.watch, Tone.mend, Tone.hold])
            verify(contrast(fill, Tone.paper) >= 3, data.tag + " " + fill + " " + contrast(fill, Tone.paper));
    }
    function test_glovesRaiseTargets() {
        compare(Tone.target, 48);
        verify(Tone.markHeight >= 72);
        Tone.gloves = true;
        compare(Tone.target, 64);
    }
    function test_textGrowsToTwice() {
        const small = Tone.body;
        Tone.textScale = 2;
        compare(Tone.body, 2 * small);
    }
}
