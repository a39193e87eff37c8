// SPDX-License-Identifier: Apache-2.0
// The reports page: one press to a kind, its pages turned, what leaves chosen, and a file asked for.
import QtQuick
import QtTest
import Snugwalk.Style
import Snugwalk.Models
import Snugwalk.Logbook

Item {
    id: stage
    width: 412
    height: 892

    Component { id: model; ReportModel {} }
    Component { id: maker; ReportsPage { width: 412; height: 892 } }

    TestCase {
        name: "Reports"
        when: windowShown

        property var reports: null
        property var page: null

        function init() {
            failOnWarning(/.?/);
            reports = createTemporaryObject(model, stage);
            page = createTemporaryObject(maker, stage, { reports: reports });
            waitForRendering(page);
        }
        function all(item: Item, test: var): var {
            let found = item.visible && test(item) ? [item] : [];
            for (let i = 0; i < item.children.length; ++i)
                found = found.concat(all(item.children[i], test));
            return found;
        }
        function button(words: string): Item {
            const found = all(page, one => one.spoken !== undefined && one.spoken.indexOf(words) >= 0);
            verify(found.length > 0, "no " + words);
            return found[0];
        }
        function press(words: string) {
            const one = button(words);
            // a picture that comes in moves what stands below it: pressed once it stands still
            let before = NaN;
            tryVerify(() => {
                const last = before;
                page.reveal(one);
                wait(10);
                before = one.mapToItem(stage, 0, 0).y;
                return before === last;
            });
            mouseClick(one);
        }
        function sheet(): Item { return all(page, one => one.Accessible.role === Accessible.Document)[0] }

        function test_oneKindIsOnePressAway() {
            compare(reports.opened, 1);
            compare(all(page, one => one.source !== undefined && String(one.source) !== "").length, 0);
            press("Work order");
            compare(reports.kind, "work_order");
            compare(page.choosing, false);
            press("another report");
            compare(page.choosing, true);
        }
        function test_pagesAreTurnedAndRead() {
            page.pick("walk");
            waitForRendering(page);
            compare(sheet().Accessible.name, "Walk report, page 1 of 2");
            verify(sheet().Accessible.description.indexOf("No hold among") >= 0);
            verify(!button("page before").enabled);
            press("next page");
            compare(sheet().Accessible.name, "Walk report, page 2 of 2");
            verify(!button("next page").enabled);
            reports.pages = ["image://photo/page/a"];
            compare(page.page, 0);
        }
        function test_whatLeavesIsChosen() {
            page.pick("walk");
            waitForRendering(page);
            compare(reports.place, "left_out");
            compare(reports.ownData, false);
            press("to about 5 km");
            compare(reports.place, "coarse");
            press("kept, in the web page");
            compare(reports.ownData, true);
            press("Letter");
            compare(reports.sheet, "letter");
        }
        function test_whatItIsAboutIsChosen() {
            page.pick("walk");
            waitForRendering(page);
            press("The walk: the last one");
            waitForRendering(page);
            press("Before the road, 2 Jan 2027");
            compare(reports.walk, "a");
            page.pick("work_order");
            waitForRendering(page);
            press("Findings: all that suit");
            waitForRendering(page);
            press("Roof sealant: crack");
            compare(Array.from(reports.chosen), ["f2"]);
            const access = all(page, one => one.label === "Where it stands, how to get there")[0];
            access.edited("by the yard gate");
            compare(reports.site.access, "by the yard gate");
        }
        function test_aFingerSigns() {
            page.pick("out_and_back");
            waitForRendering(page);
            tryVerify(() => button("sign on the screen: Hands it over").height < 100); // laid out
            press("sign on the screen: Hands it over");
            waitForRendering(page);
            const pad = all(page, one => one.Accessible.name === "sign here: Hands it over")[0];
            page.reveal(pad);
            wait(0);
            verify(!button("Signed").enabled);
            mousePress(pad, 20, 20);
            mouseMove(pad, 60, 40);
            mouseRelease(pad, 60, 40);
            press("Signed");
            const lines = reports.signatures[0];
            compare(lines.length, 1);
            fuzzyCompare(lines[0][0].x, 20 / pad.width, 0.01);
            fuzzyCompare(lines[0][lines[0].length - 1].y, 40 / pad.width, 0.01);
            press("take the signature away: Takes it");
            compare(reports.signers[1].signed, false);
        }
        function test_nothingIsSavedThatIsNotThere() {
            reports.pages = [];
            page.pick("walk");
            waitForRendering(page);
            verify(!button("Save: PDF").enabled);
            reports.pages = ["image://photo/page/a"];
            verify(button("Save: PDF").enabled);
            reports.busy = true;
            verify(!button("Save: PDF").enabled);
        }
        function test_aFaultSaysWhatAndWhatToDo() {
            page.pick("then_and_now");
            reports.fault = { what: "There is no second walk.", act: "Finish one more." };
            waitForRendering(page);
            compare(all(page, one => one.text === "There is no second walk.").length, 1);
            compare(all(page, one => one.text === "Finish one more.").length, 1);
        }
        function test_leavingThePageEndsTheDrawing() {
            page.destroy();
            tryCompare(reports, "opened", 0);
        }
    }
}
