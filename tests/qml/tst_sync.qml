// SPDX-License-Identifier: Apache-2.0
// Exchanging by taps: the quiet mark, a store, sharing step by step, taking part, revoking, choosing.
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
        name: "Sync"
        when: windowShown

        property var win: null
        property var models: null
        readonly property var sync: models?.sync

        function init() {
            failOnWarning(/.?/);
            models = session.createObject(stage);
            win = window.createObject(stage, { session: models });
            win.requestActivate();
            tryVerify(() => win.active);
        }
        function cleanup() { win.destroy(); models.destroy(); wait(0); Tone.theme = "day" }
        function all(item: Item, test: var): var {
            let found = item.visible && test(item) ? [item] : [];
            for (let i = 0; i < item.children.length; ++i)
                if (item.visible)
                    found = found.concat(all(item.children[i], test));
            return found;
        }
        function spoken(start: string): Item { return all(win.contentItem, one => one.spoken !== undefined && one.focusPolicy !== undefined && one.spoken.indexOf(start) === 0)[0] ?? null }
        function field(label: string): Item { return all(win.contentItem, one => one.label === label && one.input !== undefined)[0] ?? null }
        function says(words: string): bool { return all(win.contentItem, one => one.text !== undefined && one.level !== undefined && one.text.indexOf(words) >= 0).length > 0 }
        function open(place: string) { win.currentPlace = place; waitForRendering(win.contentItem) }
        function last(): string { return sync.acts[sync.acts.length - 1] }

        function test_theMarkIsQuietAndNamed() {
            open("rig");
            compare(spoken("Logbook").Accessible.name, "Logbook, 14 wait");
            sync.mark = "";
            compare(spoken("Logbook").Accessible.name, "Logbook");
            open("walk");
            sync.mark = "15 wait";
            waitForRendering(win.contentItem);
            verify(!says("wait"), "nothing of it on a walk");
            verify(spoken("Logbook") === null);
        }
        function test_theStoresAreTwoTapsAway() {
            spoken("Logbook").press();
            waitForRendering(win.contentItem);
            spoken("exchange: 14 wait").press();
            compare(win.currentPlace, "sync");
            verify(says("12 new entries since"));
            spoken("Exchange now with red-stick").press();
            compare(last(), "exchange red-stick");
            waitForRendering(win.contentItem);
            verify(says("files of entries: 12 of 30"));
            verify(!spoken("Exchange now with shed").enabled, "one at a time");
            spoken("Stop").press();
            compare(last(), "stop");
            verify(says("exchange again to go on"));
        }
        function test_aStoreIsAddedAndRemoved() {
            open("sync");
            spoken("add a store").press();
            waitForRendering(win.contentItem);
            verify(!spoken("Add the store").enabled);
            field("Name of the store").text = "barn";
            field("Its folder").text = "/media/barn";
            spoken("Add the store").press();
            compare(last(), "add barn folder /media/barn   ");
            verify(field("Its folder") === null, "the form is gone once it is added");
            spoken("remove shed").press();
            compare(last(), "remove shed");
            spoken("add a store").press();
            waitForRendering(win.contentItem);
            spoken("What devices meet at: a WebDAV address").press();
            field("Name of the store").text = "home";
            field("Address, https://…").text = "https://home.example/rig/";
            compare(field("Password").input.echoMode, TextInput.Password);
            field("User, if it asks for one").text = "a";
            field("Password").text = "b c";
            field("Certificate file of its authority; may stay empty").text = "/etc/home.pem";
            spoken("Add the store").press();
            compare(last(), "add home webdav https://home.example/rig/ a b c /etc/home.pem");
        }
        function test_sharingGoesStepByStep() {
            open("share");
            verify(!spoken("Show the code").enabled, "no role is chosen for a person");
            spoken("What the other device may do: technician").press();
            verify(says("certificate number"));
            field("Until, a date such as 2027-03-31; may stay empty").text = "2027-03-31";
            spoken("Show the code").press();
            waitForRendering(win.contentItem);
            compare(sync.share.acts[0], "offer technician 2027-03-31");
            const picture = all(win.contentItem, one => one.rows !== undefined && one.quiet === 4)[0];
            verify(picture.width > 200 && Math.abs(picture.width - picture.height) < 1);
            spoken("read the picture by camera").press();
            waitForRendering(win.contentItem);
            sync.reader.found("some words");
            compare(field("What the other device shows now, as words").text, "some words");
            tryVerify(() => spoken("leave the camera") === null);
            spoken("Take the answer").press();
            waitForRendering(win.contentItem);
            compare(sync.share.acts[1], "take some words");
            compare(all(win.contentItem, one => one.text === "402\u00a0917").length, 1);
            verify(says("somebody stands between"));
            spoken("The same digits: enroll it").press();
            waitForRendering(win.contentItem);
            compare(sync.share.acts[2], "confirm");
            verify(says("shed tablet is enrolled as technician."));
        }
        function test_aPictureIsDarkOnWhiteAtNight() {
            models.theme = "night";
            open("share");
            sync.share.offer("viewer", "");
            waitForRendering(win.contentItem);
            const picture = all(win.contentItem, one => one.rows !== undefined && one.quiet === 4)[0];
            const at = picture.mapToItem(win.contentItem, 0, 0), image = grabImage(win.contentItem);
            const reds = Array.from({ length: picture.width - 4 }, (_, i) => image.red(at.x + 2 + i, at.y + picture.height / 2));
            compare(image.red(at.x + 6, at.y + 6), 255);
            compare(reds.filter(red => red !== 0 && red !== 255).length, 0, "only black and white");
            verify(reds.filter(red => red === 0).length > 40);
            verify(image.red(2, 2) < 60, "the page around it is dark");
        }
        function test_takingPart() {
            open("join");
            verify(!spoken("Answer").enabled);
            field("Words of the owner's device").text = "babad gomut";
            spoken("What this device asks to be; the owner decides: helper").press();
            spoken("Answer").press();
            waitForRendering(win.contentItem);
            compare(sync.share.acts[0], "answer babad gomut helper");
            compare(all(win.contentItem, one => one.text === "402\u00a0917").length, 1);
            spoken("copy the words").press();
            sync.share.fault = { what: "A word is not as it was shown: word 3", act: "Look at this word again." };
            verify(says("word 3"));
        }
        function test_aPictureWithoutACodeIsTold() {
            open("join");
            sync.reader.lookAtFile("x.png");
            verify(says("No code was found"));
            sync.reader.found("babad gomut");
            compare(field("Words of the owner's device").text, "babad gomut");
        }
        function test_photosInFullAreAskedFor() {
            open("sync");
            spoken("ask for the originals").press();
            compare(last(), "ask ");
            verify(says("3 originals come"));
            spoken("Photos in full, when exchanging: all of them").press();
            spoken("Exchange now with shed").press();
            compare(last(), "exchange shed all");
        }
        function test_aKeyOnPaperIsShownOnce() {
            open("sync");
            spoken("make a key on paper").press();
            compare(win.currentPlace, "paper");
            waitForRendering(win.contentItem);
            verify(says("revoked like a device"));
            compare(sync.paper.acts.length, 0, "nothing is made before a person asks");
            spoken("Show the words").press();
            waitForRendering(win.contentItem);
            compare(all(win.contentItem, one => one.text === sync.paper.words && one.lineHeight !== undefined).length, 1);
            spoken("It is written down").press();
            compare(win.currentPlace, "sync");
            wait(0);
            compare(sync.paper.words, "");
        }
        function test_backByTheWordsOnPaper() {
            open("join");
            spoken("every device is lost").press();
            compare(win.currentPlace, "recover");
            waitForRendering(win.contentItem);
            verify(!spoken("Own the rig again").enabled);
            spoken("The store that has the rig: shed").press();
            field("The 24 words").text = "babad gomut";
            spoken("Own the rig again").press();
            waitForRendering(win.contentItem);
            compare(sync.paper.acts[0], "recover shed|babad gomut|");
            verify(says("No mark was typed"));
            spoken("To the stores").press();
            compare(win.currentPlace, "sync");
        }
        function test_withoutARigOneCanTakePart() {
            models.hasRig = false;
            win.begin();
            waitForRendering(win.contentItem);
            spoken("or take part in a rig").press();
            compare(win.currentPlace, "sync");
            waitForRendering(win.contentItem);
            spoken("take part in a rig of another device").press();
            waitForRendering(win.contentItem);
            verify(field("Words of the owner's device") !== null);
            spoken("back").press();
            compare(win.currentPlace, "sync");
            models.hasRig = true; // it came from a store
            win.back();
            compare(win.currentPlace, "rig");
        }
        function test_revokingSaysWhatItCannotDo() {
            open("sync");
            verify(!says("cannot take back"));
            spoken("revoke shed tablet").press();
            waitForRendering(win.contentItem);
            verify(says("cannot take back what that device has read"));
            compare(sync.acts.length, 0);
            spoken("leave it as it is").press();
            verify(!says("cannot take back"));
            spoken("revoke shed tablet").press();
            waitForRendering(win.contentItem);
            field("Why, for the record; may stay empty").text = "lost";
            spoken("Revoke shed tablet").press();
            compare(last(), "revoke d2 lost");
            verify(spoken("revoke red phone") === null && spoken("revoke old laptop") === null);
        }
        function test_aVersionIsChosenByAPerson() {
            open("sync");
            spoken("Look at what differs").press();
            compare(win.currentPlace, "conflicts");
            waitForRendering(win.contentItem);
            compare(all(win.contentItem, one => one.text === "Take this one").length > 1, true);
            spoken("Take this one: mark: pass").press();
            compare(sync.conflicts.acts[0], "choose e1 0");
            spoken("take over: Mend").press();
            compare(sync.conflicts.acts[1], "adopt s1/7");
            sync.conflicts.mayAdopt = false;
            verify(spoken("take over: Mend") === null);
            verify(says("Only an owner"));
        }
    }
}
