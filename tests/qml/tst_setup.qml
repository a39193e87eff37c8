// SPDX-License-Identifier: Apache-2.0
// The sheet of a rig in steps: few taps to a rig, later for the rest, and what was typed is what is sent.
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
        name: "Setup"
        when: windowShown

        property var win: null
        property var models: null
        property int taps: 0

        function init() { failOnWarning(/.?/) }
        function cleanup() { win.destroy(); models.destroy(); wait(0) }

        function open(changes: var, place: string) {
            models = session.createObject(stage, changes);
            win = window.createObject(stage, { session: models, width: 412, height: 892 });
            if (place !== "")
                win.currentPlace = place;
            waitForRendering(win.contentItem);
            taps = 0;
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
        function word(start: string): var {
            return all(win.contentItem, one => one.spoken !== undefined && one.focusPolicy !== undefined && one.spoken.startsWith(start))[0] ?? null;
        }
        function field(label: string): var {
            return all(win.contentItem, one => one.label === label && one.input !== undefined)[0] ?? null;
        }
        function drawing(): var {
            return all(win.contentItem, one => one.mostHeight !== undefined && one.face !== undefined)[0] ?? null;
        }
        // by touch where a finger would, brought into view first
        function tap(start: string) {
            const one = word(start);
            verify(one, "no word " + start);
            one.forceActiveFocus();
            waitForRendering(win.contentItem);
            mouseClick(one);
            waitForRendering(win.contentItem);
            ++taps;
        }

        function test_aRigInFewTaps() {
            open({ hasRig: false, person: "" }, "");
            compare(win.currentPlace, "new_rig");
            verify(drawing() === null); // nothing to draw yet
            tap("Where is it at home? Lamps, plugs and gas follow that.: Europe");
            tap("teardrop");
            field("Your name, written beside each mark; may stay empty").edited("Mar");
            tap("Next: how big");
            compare(drawing().rig.kindSlug, "teardrop");
            field("Name").edited("Kea");
            tap("Draw it");
            compare(models.added.length, 1);
            compare(models.added[0].name, "Kea");
            compare(models.added[0].kind, "teardrop");
            compare(models.added[0].practice, "europe");
            compare(models.added[0].fittings, undefined); // the usual ones are the core's to give
            compare(models.person, "Mar");
            compare(models.units, "si");
            verify(taps <= 4, taps + " taps");
        }
        function test_theContinentBringsItsUnits() {
            open({ hasRig: false }, "");
            tap("Where is it at home? Lamps, plugs and gas follow that.: North America");
            compare(models.units, "us");
            tap("Measures in; typing takes either: metres");
            compare(models.units, "si");
        }
        function test_measuresAreDrawnAsTyped() {
            open({ hasRig: false }, "");
            tap("Where is it at home? Lamps, plugs and gas follow that.: Europe");
            tap("travel trailer");
            tap("Next: how big");
            const before = drawing().rig.bodyLength;
            field("Length of the body, without the drawbar").edited("5.2 m");
            compare(drawing().rig.bodyLength, 5.2);
            field("Length of the body, without the drawbar").edited("5.2 mm,,");
            verify(drawing().rig.bodyLength > 1.5);
            field("Length of the body, without the drawbar").edited("");
            compare(drawing().rig.bodyLength, before);
            tap("Axles: 1");
            compare(drawing().rig.axles.length, 1);
        }
        function test_nothingIsSentWithoutAKind() {
            open({ hasRig: false }, "");
            tap("Next: how big");
            compare(models.added.length, 0);
            const choice = all(win.contentItem, one => one.answers !== undefined && one.problem)[0];
            compare(choice.problem, "Choose what comes nearest.");
        }
        function test_aFaultElsewhereIsGoneTo() {
            open({ hasRig: false }, "");
            tap("Where is it at home? Lamps, plugs and gas follow that.: Europe");
            tap("camper van");
            tap("Next: how big");
            tap("Next: what is fitted");
            tap("Next: its plates");
            field("1: pressure, cold, by the placard").edited("4.5 bar");
            models.rigProblems = [{ field: "width", what: "This cannot be right.", act: "Check it" }];
            waitForRendering(win.contentItem);
            verify(field("Width of the body") !== null); // unfolded, though nobody asked for more measures
            compare(field("Width of the body").problem, "This cannot be right.: Check it");
            tap("Draw it");
            compare(models.added[0].placard, "4.5 bar");
        }
        function test_theInventedRigIsOneTapAway() {
            open({ hasRig: false }, "");
            tap("Look round an invented rig first");
            compare(models.books.asked, ["demo"]);
            compare(taps, 1);
            verify(word("Look round an invented rig first. Making the invented rig: 12 of 74") !== null);
        }
        function test_theInventedRigSaysSoAndIsLeft() {
            open({}, "");
            models.books.isDemo = true;
            waitForRendering(win.contentItem);
            verify(all(win.contentItem, one => one.text !== undefined && String(one.text).indexOf("nothing of it is real") > 0).length > 0);
            tap("to my own logbook");
            tap("remove the invented rig");
            compare(models.books.asked, ["leave", "leave and forget"]);
        }
        function test_aSheetIsPutRight() {
            open({}, "");
            tap("its measures and plates");
            compare(win.currentPlace, "edit_rig");
            compare(field("Length of the body, without the drawbar").text, "6.4 m");
            field("Length of the body, without the drawbar").edited("6.6 m");
            compare(drawing().rig.bodyLength, 6.6);
            tap("Write it down");
            compare(models.changed.length, 1);
            compare(models.changed[0].length, "6.6 m");
            compare(models.changed[0].torque, "120 N·m");
            compare(models.added.length, 0);
        }
        function test_rigsArePutAwayAndBroughtBack() {
            open({}, "settings");
            tap("put Matagouri away");
            tap("bring back Totara");
            compare(models.archivals, [["r1", true], ["r3", false]]);
        }
    }
}
