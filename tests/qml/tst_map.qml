// SPDX-License-Identifier: Apache-2.0
// The map page: what is pressed opens, the rest moves the map; keys and buttons do what fingers do.
import QtQuick
import QtTest
import Snugwalk.Style
import Snugwalk.Models
import Snugwalk.Map

Item {
    id: stage
    width: 412
    height: 892

    Component { id: model; MapModel {} }
    Component { id: maker; MapPage { width: 412; height: 892 } }
    SignalSpy { id: opened; signalName: "opened" }
    SignalSpy { id: wanted; signalName: "importAsked" }

    TestCase {
        name: "Map"
        when: windowShown

        property var map: null
        property var page: null

        function init() { failOnWarning(/.?/); open({}, {}) }
        function cleanup() { close(); Tone.gloves = false }
        // the page goes before what it shows
        function close() { page.destroy(); map.destroy(); wait(0) }
        function open(changes: var, place: var) {
            map = model.createObject(stage, changes);
            page = maker.createObject(stage, Object.assign({ map: map }, place));
            opened.target = page;
            opened.clear();
            wanted.target = page;
            wanted.clear();
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
        function paper(): Item { return all(page, one => one.openGroup !== undefined)[0] }
        function asked(what: string): var { return map.asked.filter(one => one[0] === what) }

        function test_aFindingIsOnePressAway() {
            mouseClick(button("Belly pan sheet"));
            compare(opened.count, 1);
            compare(opened.signalArguments[0][0], "finding");
            compare(opened.signalArguments[0][1], "f1");
        }
        function test_aGroupShowsItsMembersAndTheyOpen() {
            mouseClick(button("4 things here"));
            compare(asked("choose")[0][1], 1);
            waitForRendering(page);
            mouseClick(button("To the coast"));
            compare(opened.signalArguments[0][0], "trip");
            compare(opened.signalArguments[0][1], "t1");
            verify(!button("A stay").enabled); // it has no page
            mouseClick(button("look closer"));
            compare(asked("closer").length, 1);
        }
        function test_aLineOpensItsTripAndBareLandComesToTheMiddle() {
            const sheet = paper();
            mouseClick(sheet, 300, 40);
            compare(opened.count, 0);
            compare(asked("move")[0][1], Math.round(sheet.width / 2 - 300));
            compare(asked("move")[0][2], Math.round(sheet.height / 2 - 40));
            map.trip = "t9";
            mouseClick(sheet, 300, 40);
            compare(opened.signalArguments[0][1], "t9");
        }
        function test_buttonsAndKeysDoWhatFingersDo() {
            mouseClick(button("nearer"));
            compare(asked("zoom")[0][1], 2);
            mouseClick(button("further away"));
            compare(asked("zoom")[1][1], 0.5);
            mouseClick(button("show everything"));
            compare(asked("whole").length, 1);
            paper().forceActiveFocus();
            keyClick(Qt.Key_Plus);
            keyClick(Qt.Key_Minus);
            keyClick(Qt.Key_0);
            keyClick(Qt.Key_Right);
            compare(asked("zoom").length, 4);
            compare(asked("whole").length, 2);
            compare(asked("move")[0][1], -Math.round(paper().width / 4));
        }
        function test_aDragMovesTheMapAndGlovesDoNot() {
            mouseDrag(paper(), 300, 60, -90, 40);
            compare(asked("move").length, 1);
            verify(asked("move")[0][1] <= -70 && asked("move")[0][1] >= -90);
            Tone.gloves = true;
            mouseDrag(paper(), 300, 60, -90, 40);
            compare(asked("move").length, 1);
        }
        function test_theWheelZooms() {
            mouseWheel(paper(), 200, 200, 0, 240);
            compare(asked("zoom")[0][1], 2);
        }
        function test_whatIsShownIsChosen() {
            mouseClick(button("what is shown"));
            waitForRendering(page);
            mouseClick(button("stays"));
            compare(asked("wish")[0], ["wish", "stays", false]);
            compare(button("stays").checked, true); // until the model says otherwise
        }
        function test_withoutAPlaceItSaysWhatWouldBringOne() {
            close();
            open({ empty: true, sheet: {} }, {});
            compare(all(page, one => one.openGroup !== undefined).length, 0);
            mouseClick(button("Take a track in"));
            compare(wanted.count, 1);
        }
        function test_oneThingIsLookedAt() {
            close();
            open({}, { thing: "f7" });
            compare(asked("open")[0][1], "f7");
        }
    }
}
