// SPDX-License-Identifier: Apache-2.0
// The walk by keyboard and thumb: what is pressed is what is asked of the model, and never a pass by default.
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
        name: "Walk"
        when: windowShown

        property var win: null
        property var models: null

        function init() {
            failOnWarning(/.?/);
            models = session.createObject(stage);
            models.walk.active = true;
            win = window.createObject(stage, { session: models });
            win.requestActivate();
            tryVerify(() => win.active);
            waitForRendering(win.contentItem);
        }
        // the window goes before what it shows
        function cleanup() { win.destroy(); models.destroy(); wait(0) }
        function find(item: Item, test: var): Item {
            if (item.visible && test(item))
                return item;
            for (let i = 0; i < item.children.length; ++i) {
                const found = find(item.children[i], test);
                if (found)
                    return found;
            }
            return null;
        }
        function all(item: Item, test: var): var {
            let found = item.visible && test(item) ? [item] : [];
            for (let i = 0; item.visible && i < item.children.length; ++i)
                found = found.concat(all(item.children[i], test));
            return found;
        }
        function button(spoken: string): Item { return find(win.contentItem, one => one.spoken === spoken && one.focusPolicy !== undefined) }
        function act(): string { return models.walk.acts[models.walk.acts.length - 1] ?? "" }

        function test_opensOnTheWalkWithoutAnAct() {
            compare(win.currentPlace, "walk");
            compare(models.walk.acts.length, 0);
        }
        function test_keys() {
            keyClick(Qt.Key_P);
            compare(act(), "pass looked");
            keyClick(Qt.Key_U);
            compare(act(), "undo");
            keyClick(Qt.Key_Down);
            compare(act(), "goTo 5");
            keyClick(Qt.Key_Up);
            compare(act(), "goTo 4");
            keyClick(Qt.Key_A);
            compare(win.currentPlace, "attention");
        }
        function test_thumb() {
            mouseClick(button("Pass"));
            compare(act(), "pass looked");
            mouseClick(button("pass at a glance"));
            compare(act(), "pass glance");
            mouseClick(button("not fitted"));
            compare(act(), "notFitted");
            mouseClick(button("look again later"));
            compare(act(), "later");
        }
        function test_cautionsComeFirst() {
            models.walk.showCautions();
            waitForRendering(win.contentItem);
            verify(!button("Pass"));
            keyClick(Qt.Key_P);
            compare(models.walk.acts.length, 0, "no pass past an unread caution");
            mouseClick(button("read: go on"));
            compare(act(), "cautionsRead");
            verify(button("Pass"));
        }
        function test_aReadingMakesItMeasured() {
            models.walk.showWheels();
            models.walk.readingChecked("cold-pressure", "wheel 1L", true, "");
            keyClick(Qt.Key_P);
            compare(act(), "pass measured");
        }
        function test_theLastReadingIsShownNotFilledIn() {
            models.walk.showWheels();
            waitForRendering(win.contentItem);
            const field = find(win.contentItem, one => one.label === "wheel 1R" && one.numeric !== undefined);
            compare(field.text, "");
            verify(field.note.indexOf("55.0 psi") >= 0);
        }
        function test_reasonsStartWithRisk() {
            mouseClick(button("could not look"));
            compare(win.currentPlace, "look_reasons");
            mouseClick(button("risky to reach today"));
            compare(act(), "couldNotLook risky_to_reach");
            compare(win.currentPlace, "walk");
        }
        function test_attentionNeedsWords() {
            models.walk.openFindings = [];
            win.currentPlace = "attention";
            waitForRendering(win.contentItem);
            const write = find(win.contentItem, one => one.text === "Write down");
            verify(!write.enabled);
            find(win.contentItem, one => one.spoken === "What: loose").press();
            verify(!write.enabled);
            find(win.contentItem, one => one.spoken === "grade 3: fastener loose, sheet moves").press();
            verify(write.enabled);
            write.press();
            const sent = JSON.parse(act().replace("attention ", ""));
            compare(sent.findings.length, 1);
            compare(sent.findings[0].defect, "loose");
            compare(sent.findings[0].grade, 3);
            compare(sent.findings[0].same, "");
            compare(sent.findings[0].point, "belly-pan");
            compare(win.currentPlace, "walk");
        }
        function test_sameFindingKeepsItsName() {
            win.currentPlace = "attention";
            waitForRendering(win.contentItem);
            find(win.contentItem, one => one.spoken === "Finding 1 now: gone").press();
            find(win.contentItem, one => one.text === "Write down: pass").press();
            const sent = JSON.parse(act().replace("attention ", ""));
            compare(sent.findings.map(one => one.same), ["f2"]);
            verify(sent.findings[0].gone);
        }
        function test_twoFindingsOfOnePointStayTwo() {
            win.currentPlace = "attention";
            waitForRendering(win.contentItem);
            const write = find(win.contentItem, one => one.text === "Write down");
            verify(!write.enabled, "nothing is chosen beforehand");
            find(win.contentItem, one => one.spoken === "Finding 1 now: worse").press();
            verify(!write.enabled, "how bad is not told yet");
            find(win.contentItem, one => one.spoken === "grade 4: fastener gone, sheet hangs").press();
            find(win.contentItem, one => one.spoken === "Finding 2, mended: now: mended, it holds").press();
            find(win.contentItem, one => one.spoken === "or: something new here").press();
            find(win.contentItem, one => one.spoken === "What: bent").press();
            verify(!write.enabled);
            const grades = all(win.contentItem, one => one.spoken === "grade 2: one fastener working");
            grades[grades.length - 1].press();
            verify(write.enabled);
            write.press();
            const sent = JSON.parse(act().replace("attention ", "")).findings;
            compare(sent.map(one => one.same), ["f2", "f4", ""]);
            compare(sent.map(one => one.grade), [4, 0, 2]);
            compare(sent.map(one => one.gone), [false, true, false]);
        }
        function test_aPassAsksForWhatIsOpenFirst() {
            models.walk.untold = 1;
            mouseClick(button("Pass"));
            compare(models.walk.acts.length, 0, "no pass over an open finding");
            compare(win.currentPlace, "attention");
        }
        function test_photosComeFromTheCameraWhereThereIsOne() {
            models.walk.openFindings = [];
            win.currentPlace = "attention";
            waitForRendering(win.contentItem);
            find(win.contentItem, one => one.text === "take a photo").press();
            waitForRendering(win.contentItem);
            find(win.contentItem, one => one.text === "Take the photo").press();
            find(win.contentItem, one => one.text === "Back to the finding").press();
            waitForRendering(win.contentItem);
            verify(find(win.contentItem, one => one.caption === "number 1" && one.opens));
            models.camera.there = false;
            verify(!find(win.contentItem, one => one.text === "take a photo"), "no dead button");
            verify(find(win.contentItem, one => one.text === "photo from a file"));
        }
        function test_theLastPhotoIsFaintOnTheGroundOnly_data() { return [{ tag: "ground", grounded: true }, { tag: "roof", grounded: false }] }
        function test_theLastPhotoIsFaintOnTheGroundOnly(data) {
            models.walk.grounded = data.grounded;
            win.currentPlace = "attention";
            waitForRendering(win.contentItem);
            find(win.contentItem, one => one.spoken === "Finding 1 now: same" || one.spoken === "Finding 1 now: still there, the same").press();
            find(win.contentItem, one => one.text === "take a photo").press();
            waitForRendering(win.contentItem);
            const faint = find(win.contentItem, one => one.fillMode !== undefined && one.opacity < 1 && String(one.source).indexOf("/full/a") > 0);
            compare(faint !== null, data.grounded);
            win.back();
            compare(win.currentPlace, "attention", "back leads to the finding, not past it");
        }
        function test_stopLeavesItOpenOrFinishes() {
            mouseClick(button("stop here"));
            compare(win.currentPlace, "finish");
            find(win.contentItem, one => one.text === "Leave it open").press();
            compare(act(), "stop");
            compare(win.currentPlace, "rig");
        }
    }
}
