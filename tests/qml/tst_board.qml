// SPDX-License-Identifier: Apache-2.0
// The home's drawing nearer and farther, and its other layer: every finding ever.
import QtQuick
import QtQuick.Layouts
import QtTest
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.Rig

Item {
    id: stage
    width: 412
    height: 900

    RigModel { id: rigModel }
    RigPage { id: page; anchors.fill: parent; rig: rigModel }
    SignalSpy { id: opened; target: page; signalName: "opened" }

    TestCase {
        name: "Board"
        when: windowShown

        function init() {
            failOnWarning(/.?/);
            opened.clear();
            Tone.gloves = false;
            for (const view of views())
                view.area.whole();
            board().ever = false;
            page.flick.contentY = 0;
            wait(0);
        }
        function all(item: Item, wanted: var): var {
            const found = item.visible && wanted(item) ? [item] : [];
            for (let i = 0; i < item.children.length; ++i)
                found.push.apply(found, all(item.children[i], wanted));
            return found;
        }
        function named(name: var): var { return all(page, item => item.press !== undefined && name.test(item.spoken)) }
        function one(name: var): Item {
            const found = named(name);
            compare(found.length, 1, name);
            return found[0];
        }
        function views(): var { return all(page, item => item.area !== undefined && item.balloonPlace) }
        function board(): var { return all(page, item => item.counted && item.faces)[0] }
        function drag(item: Item, dx: real, dy: real) {
            const touch = touchEvent(item), x = item.width / 2, y = item.height / 2;
            touch.press(0, item, x, y).commit();
            for (let i = 1; i <= 10; ++i) {
                touch.move(0, item, x + dx * i / 10, y + dy * i / 10).commit();
                wait(20); // moves of one frame are taken together
            }
            touch.release(0, item, x + dx, y + dy).commit();
        }
        function pinch(item: Item, from: real, to: real) {
            const touch = touchEvent(item), x = item.width / 2, y = item.height / 2, at = (finger, gap) => x + (finger ? gap : -gap) / 2;
            touch.press(0, item, at(0, from), y).press(1, item, at(1, from), y).commit();
            for (let i = 1; i <= 12; ++i) {
                const gap = from + (to - from) * i / 12;
                touch.move(0, item, at(0, gap), y).move(1, item, at(1, gap), y).commit();
                wait(20);
            }
            touch.release(0, item, at(0, to), y).release(1, item, at(1, to), y).commit();
        }

        function test_aDragTurnsThePageWhileTheWholeIsSeen() {
            const side = views()[0];
            drag(side.area, 0, -120);
            verify(page.flick.contentY > 40, "page at " + page.flick.contentY);
            compare(side.area.zoom, 1);
        }
        function test_aDragMovesTheDrawingOnceItIsNearer() {
            const side = views()[0];
            side.area.zoomTo(4, side.area.width / 2, side.area.height / 2);
            const before = side.area.middle.x;
            drag(side.area, -80, 0);
            fuzzyCompare(side.area.middle.x, before + 80 / side.area.scaled, 0.02);
            drag(side.area, 0, -60);
            compare(page.flick.contentY, 0);
        }
        function test_twoFingersZoomAndThePageStays() {
            const side = views()[0];
            pinch(side.area, 60, 180);
            verify(side.area.zoom > 1.5 && side.area.zoom < 3.5, "zoom " + side.area.zoom);
            compare(page.flick.contentY, 0);
            pinch(side.area, 200, 40);
            compare(side.area.zoom, 1);
        }
        function test_glovesTurnOffSwipesAndLeaveThePresses() {
            Tone.gloves = true;
            const side = views()[0];
            pinch(side.area, 60, 180);
            compare(side.area.zoom, 1);
            one(/^drawing nearer$/).press();
            verify(side.area.zoom > 1.4);
            for (const name of [/^whole$/, /^left$/, /^right$/, /^up$/, /^down$/])
                verify(one(name).height >= 64 && one(name).width >= 64, name);
            one(/^whole$/).press();
            compare(side.area.zoom, 1);
            compare(named(/^whole$/).length, 0);
        }
        function test_theWheelZoomsWithControlAndElseTurnsThePage() {
            const side = views()[0];
            for (let i = 0; i < 3; ++i) // the page tells a turn by the time since the one before
                mouseWheel(side.area, 100, 40, 0, -240, Qt.NoButton, Qt.NoModifier, 30);
            tryVerify(() => page.flick.contentY > 0);
            page.flick.cancelFlick();
            compare(side.area.zoom, 1);
            page.flick.contentY = 0;
            const before = side.paper({ x: 2, y: -1.15, z: 1.5 });
            mouseWheel(side.area, Math.round(before.x), Math.round(before.y - side.area.y), 0, 360, Qt.NoButton, Qt.ControlModifier);
            fuzzyCompare(side.area.zoom, 2, 0.01);
            // what lay under the pointer lies there still
            const after = side.paper({ x: 2, y: -1.15, z: 1.5 });
            fuzzyCompare(after.x, before.x, 1.5);
            fuzzyCompare(after.y, before.y, 1.5);
        }
        function test_keysDoAllOfIt() {
            const side = views()[0];
            side.forceActiveFocus();
            keyClick(Qt.Key_Plus); keyClick(Qt.Key_Plus); keyClick(Qt.Key_Plus);
            fuzzyCompare(side.area.zoom, 3.375, 0.001);
            const middle = { x: side.area.middle.x, y: side.area.middle.y };
            keyClick(Qt.Key_Right);
            verify(side.area.middle.x > middle.x);
            keyClick(Qt.Key_Left);
            fuzzyCompare(side.area.middle.x, middle.x, 1e-6);
            keyClick(Qt.Key_Down);
            verify(side.area.middle.y > middle.y);
            keyClick(Qt.Key_Minus);
            fuzzyCompare(side.area.zoom, 2.25, 0.001);
            keyClick(Qt.Key_0);
            compare(side.area.zoom, 1);
        }
        function test_sideAndPlanShowOnePlaceBelowTheOther() {
            const at = views().map(view => [0, 3.3, 6.4].map(x => view.paper({ x: x, y: 0, z: 1 }).x));
            for (let i = 0; i < 3; ++i)
                fuzzyCompare(at[0][i], at[1][i], 0.6);
        }
        function test_nothingIsSeenBeyondThePaper() {
            const area = views()[0].area;
            area.zoomTo(8, 0, 0);
            for (const way of [[-1, -1], [1, 1], [1, -1], [-1, 1]]) {
                for (let i = 0; i < 40; ++i)
                    area.shift(way[0], way[1]);
                verify(area.origin.x <= 0.5 && area.origin.x + area.across * area.scaled >= area.width - 0.5);
                verify(area.origin.y <= 0.5 && area.origin.y + area.up * area.scaled >= area.height - 0.5);
            }
        }
        function test_nearerOnlyWhatIsInSightHasABalloon() {
            const side = views()[0];
            const whole = side.seen.length;
            verify(whole >= 3);
            const spot = side.paper({ x: 0.12, y: -1.15, z: 2.05 });
            side.area.zoomTo(6, spot.x, spot.y - side.area.y);
            verify(side.seen.length >= 1 && side.seen.length < whole);
            for (let i = 0; i < side.seen.length; ++i) {
                const at = side.balloonPlace(i);
                verify(at.y < side.area.y, "balloon over the drawing");
                verify(at.x >= 0 && at.x <= side.width);
                verify(side.isInSight(side.seen[i].spot));
            }
            side.area.whole();
            compare(side.seen.length, whole);
        }
        function test_everyFindingEver() {
            one(/^every finding ever$/).press();
            const marks = all(page, item => item.times > 0 && item.balloonSize !== undefined);
            compare(marks.map(mark => mark.times).sort().join(" "), "1 2 4"); // the flue has no spot
            compare(named(/^place \d: .*roof.*4 times/).length, 2); // its balloon, and its row of the list
            compare(named(/^finding \d/).length, 0);
            compare(all(page, item => item.text === "1 finding written without a place").length, 1);
            one(/^every finding ever$/).press();
            compare(named(/^place \d/).length, 0);
            verify(named(/^finding \d/).length > 0);
        }
        function test_aPlacePressedIsShownInTheList() {
            one(/^every finding ever$/).press();
            const roof = named(/^place 1: .*roof/);
            roof[0].press(); // on the drawing
            compare(opened.count, 0);
            compare(board().chosen, 1);
            const row = all(page, item => item.chosen === true && item.place)[0];
            compare(row.place.number, 1);
            tryVerify(() => row.mapToItem(page, 0, 0).y + row.height <= page.height);
            row.press();
            compare(opened.count, 1);
            compare(opened.signalArguments[0][0], "f4");
        }
    }
}
