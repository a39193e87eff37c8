// SPDX-License-Identifier: Apache-2.0
// Controls: big enough, named, told by shape, growing with their words, nothing chosen beforehand.
import QtQuick
import QtQuick.Layouts
import QtTest
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Walk

Item {
    id: stage
    width: 360
    height: 740

    Component { id: act; ActButton { text: "Start"; detail: "fourteen lines, about nine minutes, and then some more words" } }
    Component { id: word; WordButton { text: "x" } }
    Component { id: chip; Chip { text: "y" } }
    Component { id: field; Field { label: "Name"; width: 300 } }
    Component { id: glyph; Glyph { kind: "pass" } }
    Component { id: choice; Choice { width: 300; answers: [{ slug: "a", name: "one" }, { slug: "b", name: "two" }] } }
    Component { id: pair; Pair { width: 320; text: "Tread, three places"; against: "5/32" } }
    Component { id: marks; MarkBar { width: 340 } }
    Component { id: caution; CautionCard { width: 340; height: 500; parts: ["one", "two"] } }
    Component {
        id: mirrored
        Item {
            width: 300
            height: 80
            LayoutMirroring.enabled: true
            LayoutMirroring.childrenInherit: true
            property alias first: a
            property alias second: b
            RowLayout { anchors.fill: parent; WordButton { id: a; text: "first" } WordButton { id: b; text: "second" } }
        }
    }

    TestCase {
        name: "Controls"
        when: windowShown

        function init() { failOnWarning(/.?/) }
        function cleanup() { Tone.gloves = false; Tone.textScale = 1 }
        function make(component: var, properties: var): var { return createTemporaryObject(component, stage, properties) }

        function test_targets_data() { return [{ tag: "hands", least: 48 }, { tag: "gloves", least: 64 }] }
        function test_targets(data) {
            Tone.gloves = data.tag === "gloves";
            for (const one of [act, word, chip]) {
                const item = make(one, {});
                verify(item.implicitWidth >= data.least && item.implicitHeight >= data.least, item + " " + item.implicitWidth + " " + item.implicitHeight);
            }
            verify(make(field, {}).input.implicitHeight >= data.least);
        }
        function test_passAndAttentionAreTall() {
            const bar = make(marks, {});
            waitForRendering(bar);
            for (const name of ["pass", "attention"])
                verify(findChild(bar, name).height >= 72);
        }
        function test_namesAndRoles() {
            compare(make(word, {}).Accessible.name, "x");
            compare(make(word, {}).Accessible.role, Accessible.Button);
            compare(make(chip, {}).Accessible.role, Accessible.RadioButton);
            verify(make(act, {}).Accessible.name.indexOf("Start") === 0);
            compare(make(field, {}).input.Accessible.name, "Name");
        }
        function test_shapeTellsTheState_data() {
            // interface.md, "Shapes and colours"
            return [{ tag: "pass", shape: "wheel" }, { tag: "watch", shape: "half disc" }, { tag: "mend", shape: "chock" }, { tag: "hold", shape: "barred square" },
                { tag: "could_not_look", shape: "dashed ring" }, { tag: "not_fitted", shape: "dash" }, { tag: "not_looked", shape: "gap" }];
        }
        function test_shapeTellsTheState(data) {
            const item = make(glyph, { kind: data.tag });
            compare(item.shape, data.shape);
            verify(item.Accessible.name !== "");
        }
        function inGrey(item: Item): string {
            const image = grabImage(item);
            let print = "";
            for (let y = 0; y < 24; ++y)
                for (let x = 0; x < 24; ++x)
                    print += image.alpha(x, y) > 100 && image.red(x, y) + image.green(x, y) + image.blue(x, y) < 570 ? "#" : ".";
            return print;
        }
        function test_shapesDifferInGrey() {
            const seen = [];
            for (const kind of ["pass", "watch", "mend", "hold", "could_not_look", "not_fitted", "not_looked"]) {
                const item = make(glyph, { kind: kind, size: 24, x: 40 * seen.length });
                tryVerify(() => kind === "not_looked" || inGrey(item).indexOf("#") >= 0);
                const print = inGrey(item);
                verify(seen.indexOf(print) < 0, kind + " looks like another shape");
                seen.push(print);
            }
        }
        function test_wordsGrowTheirControl() {
            for (const one of [act, chip, word]) {
                Tone.textScale = 1;
                const item = make(one, {});
                item.width = 320;
                waitForRendering(item);
                const before = item.implicitHeight;
                Tone.textScale = 2;
                tryVerify(() => item.implicitHeight >= before);
                verify(item.contentItem.implicitHeight <= item.implicitHeight);
            }
            const wide = make(act, { width: 320 });
            tryVerify(() => wide.implicitHeight > 120);
        }
        function test_nothingIsChosenUntilAPersonDoes() {
            const item = make(choice, {}), spy = createTemporaryQmlObject("import QtTest; SignalSpy {}", stage);
            spy.target = item;
            spy.signalName = "picked";
            compare(item.chosen, "");
            tryVerify(() => item.height > 0);
            mouseClick(item, 20, item.height - 20);
            compare(spy.count, 1);
            compare(spy.signalArguments[0][0], "a");
            compare(item.chosen, "", "the owner of the answer decides");
        }
        function test_pairStacksLargeWords() {
            const item = make(pair, { against: "risky to reach today: mud" });
            verify(item.beside);
            Tone.textScale = 2;
            tryVerify(() => !item.beside);
            verify(item.implicitHeight >= item.first.height + item.second.height);
        }
        function test_cautionsOneByOneWithLargeWords() {
            Tone.textScale = 2;
            const item = make(caution, {});
            verify(!item.last);
            item.at = 1;
            verify(item.last);
        }
        function test_mirrored() {
            const item = make(mirrored, {});
            waitForRendering(item);
            verify(item.first.x > item.second.x);
        }
        function test_keysPress() {
            const item = make(word, {}), spy = createTemporaryQmlObject("import QtTest; SignalSpy { signalName: 'clicked' }", stage);
            spy.target = item;
            item.forceActiveFocus(Qt.TabFocusReason);
            verify(item.visualFocus);
            keyClick(Qt.Key_Return);
            keyClick(Qt.Key_Space);
            compare(spy.count, 2);
        }
    }
}
