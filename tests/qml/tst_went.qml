// SPDX-License-Identifier: Apache-2.0
// How it went: kinds to choose, rows read by press, key and word, numbers unfolded, files asked for.
import QtQuick
import QtTest
import Snugwalk.Style
import Snugwalk.Models
import Snugwalk.Logbook

Item {
    id: stage
    width: 412
    height: 892

    Component { id: model; PlotsModel {} }
    Component { id: maker; WentPage { width: 412; height: 892 } }

    TestCase {
        name: "Went"
        when: windowShown

        property var plots: null
        property var page: null

        function init() {
            failOnWarning(/.?/);
            plots = model.createObject(stage);
            page = maker.createObject(stage, { plots: plots, thing: "shake" });
            waitForRendering(page);
        }
        // the page goes before what it shows
        function cleanup() {
            page?.destroy();
            plots.destroy();
            wait(0);
        }
        function all(item: Item, test: var): var {
            let found = item.visible && test(item) ? [item] : [];
            for (let i = 0; i < item.children.length; ++i)
                found = found.concat(all(item.children[i], test));
            return found;
        }
        function button(words: string): Item {
            const found = all(page, one => one.spoken !== undefined && one.focusPolicy !== undefined && one.spoken.indexOf(words) >= 0);
            verify(found.length > 0, "no " + words);
            return found[0];
        }
        function press(words: string) {
            const one = button(words);
            page.reveal(one);
            wait(0);
            mouseClick(one);
        }
        function board(): Item { return all(page, one => one.xs !== undefined && one.picture !== undefined)[0] }

        function test_whatIsAskedForIsOpened() {
            compare(plots.opened, "shake");
            press("Cost by year");
            compare(plots.kind, "cost");
            press("Belly pan sheet: loose");
            compare(plots.subject, "c1");
            press("every month there is");
            compare(plots.all, true);
            page.destroy();
            page = null;
            tryCompare(plots, "closed", 1);
        }
        function test_rowsAreReadByPressKeyAndWord() {
            const plot = board();
            compare(plot.row, -1);
            compare(plot.Accessible.role, Accessible.Slider);
            verify(plot.Accessible.name.indexOf("Roof vent sealant") > 0);
            page.reveal(plot);
            mouseClick(plot, plot.xs[2], plot.picture.top + 40);
            compare(plot.row, 2);
            verify(plot.Accessible.name.indexOf("December 2026") > 0, plot.Accessible.name);
            verify(plot.activeFocus);
            keyClick(Qt.Key_Right);
            compare(plot.row, 3);
            keyClick(Qt.Key_Left);
            keyClick(Qt.Key_Left);
            compare(plot.row, 1);
            press("later");
            compare(plot.row, 2);
            press("earlier");
            press("earlier");
            compare(plot.row, 0);
            verify(!button("earlier").enabled);
            keyClick(Qt.Key_Left);
            compare(plot.row, 0);
            compare(all(page, one => one.text !== undefined && String(one.text).indexOf("October 2026: Days 30") === 0).length, 1);
        }
        function test_numbersUnfold() {
            const lines = () => all(page, one => one.label !== undefined && one.value !== undefined && one.against !== undefined);
            compare(lines().length, 0);
            press("all its numbers");
            compare(lines().length, 7);
            compare(lines()[0].label, "April 2027"); // newest first
            verify(lines()[0].value.indexOf("Aged like, days 22") >= 0, lines()[0].value);
            press("fold the numbers");
            compare(lines().length, 0);
        }
        function test_filesAreAskedFor() {
            const saves = all(page, one => one.ending !== undefined && one.suggested !== undefined && one.chosen !== undefined && one.text !== undefined);
            compare(saves.map(one => one.ending).join(" "), "png svg csv");
            compare(saves[0].suggested, "file:///home/matagouri-weathering.png");
            saves[1].chosen("file:///home/x.svg");
            compare(plots.written[0].join(" "), "svg file:///home/x.svg");
            verify(all(page, one => one.text === "Written: matagouri-weathering.svg").length === 1);
        }
        function test_withoutDataItSaysWhatBringsIt() {
            const none = plots.plots[0];
            plots.plots = [{ slug: "cost", title: "Cost by year", about: "", notes: [], empty: "No mend has a cost that can be read.", head: none.head, rows: [] }];
            waitForRendering(page);
            verify(all(page, one => one.text === "No mend has a cost that can be read.").length === 1);
            compare(all(page, one => one.xs !== undefined && one.picture !== undefined).length, 0);
            compare(all(page, one => one.ending !== undefined && one.suggested !== undefined && one.chosen !== undefined && one.text !== undefined).length, 0);
        }
    }
}
