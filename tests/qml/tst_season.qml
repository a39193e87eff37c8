// SPDX-License-Identifier: Apache-2.0
// Due, why, what if, trip and import: what a press asks the models for, and what they show when empty.
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
        name: "Season"
        when: windowShown

        property var win: null
        property var models: null

        function init() { failOnWarning(/.?/) }
        function cleanup() { win.destroy(); models.destroy(); wait(0); Tone.gloves = false; Tone.textScale = 1 }

        function open(place: string, thing: string): var {
            models = session.createObject(stage);
            win = window.createObject(stage, { session: models, width: 412, height: 892 });
            win.currentThing = thing;
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
        function button(words: string): Item { return all(win.contentItem, one => one.spoken !== undefined && one.press !== undefined && one.spoken.startsWith(words))[0] ?? null }
        function says(words: string): bool { return all(win.contentItem, one => one.lineCount !== undefined && String(one.text).includes(words)).length > 0 }

        function test_theListAsksForWhatMovedIt() {
            open("due", "");
            compare(models.due.opens, 1);
            verify(says("sooner than by the catalogue alone"));
        }
        function test_filtersUnfoldAndAsk() {
            open("due", "");
            verify(!button("Which: past due"));
            button("showing").press();
            button("Which: past due").press();
            compare(models.due.span, "past");
            button("In which order: by concern").press();
            compare(models.due.order, "concern");
            button("Zone: Roof").press();
            compare(models.due.zone, "roof");
            verify(button("showing past due, Roof, by concern"));
        }
        function test_aRowOpensItsWhy() {
            open("due", "");
            button("Wheel bearings").press();
            compare(win.currentPlace, "why");
            compare(models.why.opened, "Wheel bearings");
        }
        function test_whyIsReadOutWhole() {
            open("why", "roof-vent-sealant");
            const drawn = all(win.contentItem, one => one.picture !== undefined && one.steps !== undefined)[0];
            verify(drawn.Accessible.name.includes("Sunlight: 0.8 months sooner"));
            verify(drawn.at(drawn.picture.likely) < drawn.at(drawn.picture.nominal), "sooner is to the left");
            button("its readings over time").press();
            compare(win.currentPlace, "trend");
            compare(models.trends.opened, "roof-vent-sealant");
        }
        function test_aLegIsSentAsTyped() {
            open("what_if", "");
            button("Where it stands: Shore camp").press();
            button("On which road: gravel").press();
            button("Under what: under a roof or cover").press();
            button("Work it out").press();
            const leg = models.whatIf.sent[0];
            compare(leg.from, "2027-03-01");
            compare(leg.until, "2027-03-31");
            compare(leg.stay, "1");
            compare(leg.road, "gravel");
            verify(leg.covered);
            button("take away Shore camp").press();
            compare(models.whatIf.legs.length, 0);
        }
        function test_faultsStandAtTheirField() {
            open("what_if", "");
            models.whatIf.problems = [{ field: "place", what: "Not a place on earth: 94, 10", act: "Choose one." }];
            const field = all(win.contentItem, one => one.problem !== undefined && one.label === "Latitude, longitude in degrees")[0];
            verify(field.problem.startsWith("Not a place on earth"));
        }
        function test_aTripLeadsToItsLog() {
            open("trip", "t1");
            compare(models.trip.opened, "t1");
            button("take in another log of its shaking").press();
            compare(win.currentPlace, "import");
            verify(all(win.contentItem, one => one.answers !== undefined && one.label === "Of which trip")[0].chosen === "t1");
        }
        function test_withoutATripOneIsAskedFor() {
            open("trip", "");
            models.trip.tripId = "";
            models.trip.map = {};
            verify(says("No trip yet"));
            button("Take a track in").press();
            compare(win.currentPlace, "import");
        }
        function test_aTripWithoutALineSaysSo() {
            open("trip", "t1");
            models.trip.map = {};
            verify(says("no line to draw"));
        }
        function test_readingCanBeStopped() {
            open("import", "");
            models.intake.busy = true;
            verify(!button("Choose the file"));
            verify(says("3.4 of 8.5 MB"));
            button("Stop").press();
            verify(models.intake.stopped);
            verify(says("Nothing of the file was written"));
        }
        function test_aFaultSaysWhatWhereAndWhatToDo() {
            open("import", "");
            models.intake.fault = { what: "drive.csv could not be taken in. Nothing was written.", where: "line 12", reason: "a time that goes back", act: "Put it right in the file." };
            verify(says("could not be taken in") && says("line 12") && says("goes back") && says("Put it right"));
        }
        function test_theTripListOpensATrip() {
            open("logbook", "");
            button("trips").press();
            waitForRendering(win.contentItem);
            button("To the coast").press();
            compare(win.currentPlace, "trip");
            compare(models.trip.opened, "t1");
        }
    }
}
