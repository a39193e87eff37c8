// SPDX-License-Identifier: Apache-2.0
// The bench by taps: from a subject to a question, its fields, the star, the wheels, keeping, a fitted wheel.
import QtQuick
import QtTest
import Snugwalk.Style
import Snugwalk.Models
import Snugwalk.App

Item {
    id: stage
    width: 10
    height: 10

    Component { id: session; Session {} }
    Component { id: window; Main { width: 412; height: 892 } }

    TestCase {
        name: "Bench"
        when: windowShown

        property var win: null
        property var models: null

        function init() {
            failOnWarning(/.?/);
            models = session.createObject(stage);
            win = window.createObject(stage, { session: models });
            win.requestActivate();
            tryVerify(() => win.active);
        }
        function cleanup() { win.destroy(); models.destroy(); wait(0) }
        function all(item: Item, test: var): var {
            let found = item.visible && test(item) ? [item] : [];
            for (let i = 0; i < item.children.length; ++i)
                if (item.visible)
                    found = found.concat(all(item.children[i], test));
            return found;
        }
        function spoken(start: string): Item { return all(win.contentItem, one => one.spoken !== undefined && one.focusPolicy !== undefined && one.spoken.indexOf(start) === 0)[0] }
        function field(label: string): Item { return all(win.contentItem, one => one.label === label && one.input !== undefined)[0] }
        function open(place: string) { win.currentPlace = place; waitForRendering(win.contentItem) }
        function last(): string { return models.bench.acts[models.bench.acts.length - 1] }

        function test_aQuestionIsTwoTapsAway() {
            spoken("Bench").press();
            waitForRendering(win.contentItem);
            spoken("Weighing. From three tickets").press();
            compare(win.currentPlace, "bench_question");
            compare(win.currentThing, "weigh");
            compare(last(), "open weigh");
        }
        function test_fieldsTellWhatTheyUnderstood() {
            open("bench_question");
            compare(field("Torque, if known").note, "120 lb·ft = 162.7 N·m");
            compare(field("Checked on, if known").problem, "Not a date. Write it as 2026-11-24.");
            field("Checked on, if known").input.forceActiveFocus();
            compare(field("Checked on, if known").problem, "", "half a date is no mistake");
            field("Studs").input.forceActiveFocus();
            keyClick(Qt.Key_End);
            keyClick(Qt.Key_Backspace);
            keyClick(Qt.Key_5);
            compare(last(), "type studs 5");
            spoken("Thread of the studs: M12").press();
            compare(last(), "type stud m12");
            spoken("Thread of the studs: M14").press();
            compare(last(), "type stud ", "pressed once more it is taken away");
            spoken("Lubricated studs").press();
            compare(last(), "type wet yes");
        }
        function test_whatMayStayEmptyIsFoldedAway() {
            const inputs = models.bench.inputs;
            const one = (name, more) => Object.assign({ name: name, label: name, note: "", kind: "number", wide: false, choices: [], typed: "", understood: "", problem: "", needed: false }, more);
            inputs.rows = [one("Load", { needed: true }), one("Length", { typed: "3 m" }), one("Size", { problem: "Size is missing." }),
                one("Kind", {}), one("Step", {}), one("Grade", {}), one("Tag", {})];
            open("bench_question");
            const seen = label => field(label) !== undefined; // of what is in sight
            verify(seen("Load"));
            verify(seen("Length, if known"), "what holds something");
            verify(seen("Size, if known"), "what is wrong");
            verify(!seen("Kind, if known"));
            spoken("more figures, if known").press();
            verify(seen("Kind, if known"));
            verify(seen("Tag, if known"));
        }
        function test_theStarGoesOnByTaps() {
            open("bench_question");
            const star = all(win.contentItem, one => one.goOn !== undefined && one.sequence !== undefined)[0];
            const walked = [];
            while (!star.finished) {
                walked.push(star.next);
                compare(star.round, Math.floor((walked.length - 1) / 6));
                spoken("Tightened: the next").press();
            }
            compare(walked, [1, 4, 2, 5, 3, 6, 1, 4, 2, 5, 3, 6, 1, 4, 2, 5, 3, 6]);
            compare(star.next, 0);
            spoken("Begin again").press();
            compare(star.next, 1);
            spoken("nut 1, 1 of 6").press();
            compare(star.next, 4, "the wheel itself can be pressed");
            spoken("one nut back").press();
            compare(star.next, 1);
        }
        function test_wheelsShowWhatTheyReadBefore() {
            open("bench_question");
            const map = all(win.contentItem, one => one.map !== undefined && one.chosen === 0)[0];
            compare(map.wheel.history.length, 2);
            spoken("wheel 1R, 401 kPa, low").press();
            compare(map.wheel.history[0].value, "401 kPa");
            spoken("its readings over time").press();
            compare(win.currentPlace, "trend");
            compare(win.currentThing, "tire-pressure");
        }
        function test_keepingAsksWhichWheel() {
            open("bench_question");
            verify(!spoken("Keep as reading").enabled);
            spoken("Where it was read: wheel 1R").press();
            spoken("Keep as reading").press();
            compare(last(), "keep wheel 1R");
        }
        function test_whatCannotBeKeptSaysWhy() {
            models.bench.keeping = { able: false, what: "Torque, on “Nuts”", stands: "Start a walk first.", places: [] };
            open("bench_question");
            verify(!spoken("Keep as reading").enabled);
            compare(all(win.contentItem, one => one.text === "Start a walk first." && one.lineCount !== undefined).length, 1);
        }
        function test_aFittedWheelLeadsToItsNuts() {
            open("bench_question");
            verify(!spoken("Write down the fitting").enabled);
            spoken("Which wheel: wheel 1L").press();
            spoken("Write down the fitting").press();
            compare(last(), "fitted wheel 1L");
            verify(!spoken("Write down the fitting").enabled, "once");
            spoken("Tightening of wheel nuts").press();
            compare(win.currentPlace, "why");
            compare(win.currentThing, "wheel-nut-torque");
        }
    }
}
