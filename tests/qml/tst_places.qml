// SPDX-License-Identifier: Apache-2.0
// Every place of the app: its targets, names and words at several sizes; emergency one press away.
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
    Component { id: window; Main {} }

    TestCase {
        name: "Places"
        when: windowShown

        readonly property var places: ["rig", "due", "logbook", "bench", "bench_question", "start", "walk", "lines", "attention", "look_reasons", "finish", "reports", "went", "compare", "finding", "draw", "camera", "trend", "state", "accept", "points", "add_point", "supplies", "why", "what_if", "trip", "map", "import", "search", "sync", "share", "join", "recover", "paper", "conflicts", "new_rig", "edit_rig", "settings", "about", "emergency"]
        property var win: null
        property var models: null

        function init() { failOnWarning(/.?/) }
        // the window goes before what it shows
        function cleanup() { win.destroy(); models.destroy(); wait(0); Tone.gloves = false; Tone.textScale = 1; Tone.theme = "day" }

        function open(place: string, width: real, height: real, changes: var): var {
            models = session.createObject(stage, changes);
            win = window.createObject(stage, { session: models, width: width, height: height });
            win.currentPlace = place;
            waitForRendering(win.contentItem);
            return models;
        }
        function seen(item: Item): bool {
            for (let up = item; up; up = up.parent)
                if (!up.visible || up.opacity === 0)
                    return false;
            return true;
        }
        function all(item: Item, test: var): var {
            let found = seen(item) && test(item) ? [item] : [];
            for (let i = 0; i < item.children.length; ++i)
                found = found.concat(all(item.children[i], test));
            return found;
        }
        function buttons(): var { return all(win.contentItem, one => one.spoken !== undefined && one.focusPolicy !== undefined) }
        function rows(sizes: var): var {
            const out = [];
            for (const place of places)
                for (const size of sizes)
                    out.push({ tag: place + " " + size.join("x"), place: place, width: size[0], height: size[1], scale: size[2], gloves: size[3] });
            return out;
        }

        function test_targetsAreNamedAndLarge_data() { return rows([[360, 740, 1, false], [360, 740, 2, false], [1024, 768, 1, true]]) }
        function test_targetsAreNamedAndLarge(data) {
            open(data.place, data.width, data.height, { textScale: data.scale, gloves: data.gloves });
            const found = buttons(), least = data.gloves ? 64 : 48;
            verify(found.length > 0);
            for (const one of found) {
                verify(one.spoken !== "" && one.Accessible.name !== "", one + " has no name");
                verify(one.width >= least && one.height >= least, one.spoken + " " + one.width + " x " + one.height);
                const left = one.mapToItem(win.contentItem, 0, 0).x;
                verify(left >= -1 && left + one.width <= data.width + 1, one.spoken + " leaves the screen sideways");
            }
        }
        function test_wordsStayWhole_data() { return rows([[360, 740, 2, false], [412, 892, 1, false], [820, 1180, 1, false], [1280, 800, 1, false]]) }
        function test_wordsStayWhole(data) {
            open(data.place, data.width, data.height, { textScale: data.scale });
            const texts = all(win.contentItem, one => one.paintedWidth !== undefined && one.lineCount !== undefined && one.text !== "" && one.elide === Text.ElideNone && one.fontSizeMode === Text.FixedSize);
            verify(texts.length > 0);
            for (const one of texts) {
                verify(one.paintedWidth <= one.width + 1, one.text + ": " + one.paintedWidth + " in " + one.width);
                tryVerify(() => one.paintedHeight <= one.height + 1, 500, one.text + ": " + one.paintedHeight + " high in " + one.height);
            }
        }
        function test_emergencyIsOnePressAway_data() { return rows([[360, 740, 1, false], [1280, 800, 1, false]]).filter(one => one.place !== "emergency") }
        function test_emergencyIsOnePressAway(data) {
            open(data.place, data.width, data.height, {});
            const word = buttons().filter(one => one.spoken === "emergency")[0];
            verify(word, "no word on " + data.place);
            const at = word.mapToItem(win.contentItem, 0, 0);
            verify(at.y >= 0 && at.y + word.height <= data.height + 1, "it is not in a scroll");
            mouseClick(word);
            compare(win.currentPlace, "emergency");
            const text = all(win.contentItem, one => one.fontSizeMode === Text.Fit)[0];
            verify(text.paintedHeight <= text.height + 1 && !text.truncated);
            keyClick(Qt.Key_Escape);
            compare(win.currentPlace, data.place);
        }
        function test_withoutARigThereIsItsForm() {
            open("rig", 412, 892, { hasRig: false });
            compare(buttons().filter(one => one.spoken === "teardrop").length, 1);
            verify(buttons().some(one => one.spoken === "emergency"));
        }
        function test_problemsStandAtTheirField() {
            open("rig", 412, 892, { hasRig: false, rigProblems: [{ field: "length", what: "Not understood: 6,,4", act: "Write it as 6.4 m" }] });
            const field = all(win.contentItem, one => one.label !== undefined && one.problem)[0];
            compare(field.problem, "Not understood: 6,,4: Write it as 6.4 m");
            verify(models.added.length === 0);
        }
        function test_anOpenWalkIsGoneOnWith() {
            models = session.createObject(stage);
            models.walk.active = true;
            win = window.createObject(stage, { session: models });
            compare(win.currentPlace, "walk");
        }
        function test_wideKeepsTheDrawing() {
            open("due", 1280, 800, {});
            verify(all(win.contentItem, one => one.mostHeight !== undefined && one.face === "top").length === 1);
        }
    }
}
