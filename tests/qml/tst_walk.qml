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
            compare(win.currentPlace, "walk", "the usual reasons unfold in place");
            waitForRendering(win.contentItem);
            const reasons = all(win.contentItem, one => one.spoken?.startsWith("could not look: "));
            compare(reasons[0].spoken, "could not look: risky to reach today");
            compare(reasons.length, 4);
            for (const one of reasons)
                verify(one.height >= Tone.target);
            reasons[0].press();
            compare(act(), "couldNotLook risky_to_reach");
            compare(models.walk.acts.length, 1);
            compare(win.currentPlace, "walk");
            tryVerify(() => button("could not look"), 1000, "they fold again");
        }
        function test_anotherReasonHasItsPage() {
            mouseClick(button("could not look"));
            find(win.contentItem, one => one.spoken === "another reason").press();
            compare(win.currentPlace, "look_reasons");
            find(win.contentItem, one => one.spoken === "no time").press();
            compare(act(), "couldNotLook no_time");
            compare(win.currentPlace, "walk");
        }
        function test_whereThereIsRoomAReasonIsOneTap() {
            win.width = 820;
            win.height = 1180;
            waitForRendering(win.contentItem);
            find(win.contentItem, one => one.spoken === "could not look: risky to reach today").press();
            compare(act(), "couldNotLook risky_to_reach");
        }
        function test_lastTimeIsToldNotCopied() {
            verify(find(win.contentItem, one => one.text === "last: looked, pass, 12 May 2026, A."));
            compare(models.walk.acts.length, 0);
            verify(!find(win.contentItem, one => one.caption === "last time"), "an open finding brings its own photo");
            models.walk.openFindings = [];
            tryVerify(() => find(win.contentItem, one => one.caption === "last time" && one.opens));
        }
        function field(label: string): Item { return find(win.contentItem, one => one.label === label && one.numeric !== undefined) }
        function key(name: string): Item { return find(win.contentItem, one => one.objectName === "key " + name && one.enabled) }
        function test_keypad() {
            models.walk.showWheels();
            waitForRendering(win.contentItem);
            field("wheel 1R").input.forceActiveFocus();
            waitForRendering(win.contentItem);
            verify(!button("Pass"), "the keypad has the thumb's place");
            for (const name of ["5", "6", "mark", "5"])
                mouseClick(key(name));
            compare(field("wheel 1R").text, "56.5");
            compare(act(), "setReading cold-pressure wheel 1R 56.5");
            verify(field("wheel 1R").input.activeFocus, "a press leaves the keyboard's focus with the field");
            mouseClick(key("mark"));
            compare(field("wheel 1R").text, "56.5", "one mark in a number");
            mouseClick(key("erase"));
            mouseClick(key("erase"));
            compare(field("wheel 1R").text, "56");
            mouseClick(button("in kPa"));
            compare(field("wheel 1R").text, "56 kPa");
            mouseClick(key("1"));
            compare(field("wheel 1R").text, "561 kPa", "figures go before the unit");
            verify(!key("minus"), "a tire has no pressure below zero");
            mouseClick(key("next"));
            verify(field("wheel 2L").input.activeFocus);
            keyClick(Qt.Key_6);
            compare(field("wheel 2L").text, "6", "the keyboard works too");
            compare(act(), "setReading cold-pressure wheel 2L 6");
            mouseClick(key("done"));
            waitForRendering(win.contentItem);
            verify(button("Pass"));
            keyClick(Qt.Key_P);
            compare(act(), "pass measured");
        }
        function test_keypadSpeaksTheLanguageAndIsLarge_data() { return [{ tag: "bare", gloves: false, side: 48 }, { tag: "gloves", gloves: true, side: 64 }] }
        function test_keypadSpeaksTheLanguageAndIsLarge(data) {
            models.gloves = data.gloves;
            models.walk.decimalMark = ",";
            models.walk.showWheels();
            models.walk.readings = models.walk.readings.map(one => Object.assign({}, one, { signed: true }));
            waitForRendering(win.contentItem);
            field("wheel 1R").input.forceActiveFocus();
            waitForRendering(win.contentItem);
            const keys = all(win.contentItem, one => one.objectName?.startsWith("key ") && one.enabled);
            verify(keys.length >= 14);
            for (const one of keys) {
                verify(one.height >= data.side && one.width >= data.side, one.objectName);
                verify(one.spoken !== "", one.objectName);
            }
            compare(key("mark").spoken, "decimal comma");
            key("4").press(); key("mark").press(); key("5").press(); key("minus").press();
            compare(field("wheel 1R").text, "-4,5");
            // last time's figure and the limit stand beside what is typed
            verify(find(win.contentItem, one => one.against === "last time 55.0 psi"));
            verify(find(win.contentItem, one => one.against === "55.1 psi at least; maker's figure"));
        }
        function test_aNewerListLeavesTheFieldAtHand() {
            models.walk.showWheels();
            waitForRendering(win.contentItem);
            const at = field("wheel 1R");
            at.input.forceActiveFocus();
            models.walk.readings = JSON.parse(JSON.stringify(models.walk.readings));
            compare(field("wheel 1R"), at);
            verify(at.input.activeFocus);
        }
        function lines(): var { return all(win.contentItem, one => one.modelData?.line !== undefined && one.spoken !== undefined).map(one => one.modelData.line) }
        function test_linesAreSearchedAndSifted() {
            win.currentPlace = "lines";
            waitForRendering(win.contentItem);
            tryVerify(() => lines().length > 5);
            const search = find(win.contentItem, one => one.label === "Search the lines");
            search.input.forceActiveFocus();
            search.text = "SIDEwáll torch";
            search.edited(search.text);
            tryVerify(() => lines().length === 1 && lines()[0] === 2, 1000, "accents and order of words do not matter");
            search.edited("");
            tryVerify(() => lines().length > 5);
            find(win.contentItem, one => one.spoken === "left, 4").press();
            tryVerify(() => JSON.stringify(lines()) === "[4,5,6,8]");
            find(win.contentItem, one => one.spoken === "only one stand").press();
            find(win.contentItem, one => one.spoken === "Stand: Rear").press();
            tryVerify(() => JSON.stringify(lines()) === "[8]");
            find(win.contentItem, one => one.modelData?.line === 8 && one.spoken !== undefined).press();
            compare(act(), "goTo 8");
            compare(win.currentPlace, "walk");
        }
        function test_theLightIsOfferedWhereTheCameraHasOne() {
            win.currentPlace = "camera";
            waitForRendering(win.contentItem);
            verify(!find(win.contentItem, one => one.spoken === "Light of the camera: on"));
            models.camera.hasTorch = true;
            waitForRendering(win.contentItem);
            find(win.contentItem, one => one.spoken === "Light of the camera: on").press();
            verify(models.camera.torch);
        }
        // Counted as a person would press: the acceptance asks for one, and for five at most after attention.
        function test_taps() {
            models.walk.openFindings = [];
            let taps = 0;
            const tap = item => { item.press(); ++taps; waitForRendering(win.contentItem) };
            tap(button("Pass"));
            compare(act(), "pass looked");
            console.info("taps for a full pass of one point:", taps);
            compare(taps, 1);
            button("Attention").press();
            waitForRendering(win.contentItem);
            taps = 0;
            tap(find(win.contentItem, one => one.spoken === "What: loose"));
            tap(find(win.contentItem, one => one.spoken === "grade 3: fastener loose, sheet moves"));
            tap(find(win.contentItem, one => one.text === "take a photo"));
            tap(find(win.contentItem, one => one.text === "Take the photo"));
            if (find(win.contentItem, one => one.text === "Back to the finding"))
                tap(find(win.contentItem, one => one.text === "Back to the finding"));
            tap(find(win.contentItem, one => one.text === "Write down"));
            const sent = JSON.parse(act().replace("attention ", "")).findings[0];
            compare(sent.photos.length, 1);
            console.info("taps for a finding with a photo, after attention:", taps);
            verify(taps <= 5);
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
