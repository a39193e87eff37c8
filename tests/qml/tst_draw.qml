// SPDX-License-Identifier: Apache-2.0
// Drawing on a photo: two taps, a drag and the keys all set the ends, in shares of the picture.
import QtQuick
import QtTest
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.App

Item {
    id: stage
    width: 10
    height: 10

    Component { id: session; Session {} }
    Component { id: window; Main { width: 412; height: 892 } }

    TestCase {
        name: "Draw"
        when: windowShown

        property var win: null
        property var models: null
        property Item sheet: null

        function init() {
            failOnWarning(/.?/);
            models = session.createObject(stage);
            win = window.createObject(stage, { session: models });
            win.currentPlace = "draw";
            win.requestActivate();
            tryVerify(() => win.active);
            waitForRendering(win.contentItem);
            tryVerify(() => (sheet = find(win.contentItem, one => one.preventStealing === true)) !== null);
        }
        function cleanup() { win.destroy(); models.destroy(); wait(0); Tone.gloves = false }
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
        function at(x: real, y: real): point { return Qt.point(x * sheet.width, y * sheet.height) }
        function last(): var { return models.drawing.acts[models.drawing.acts.length - 1] }
        function close(shape: var, x1: real, y1: real, x2: real, y2: real) {
            fuzzyCompare(shape.x1, x1, 0.01); fuzzyCompare(shape.y1, y1, 0.01);
            fuzzyCompare(shape.x2, x2, 0.01); fuzzyCompare(shape.y2, y2, 0.01);
        }

        function test_twoTaps_data() { return [{ tag: "bare", gloves: false }, { tag: "gloves", gloves: true }] }
        function test_twoTaps(data) {
            models.gloves = data.gloves;
            mouseClick(sheet, at(0.2, 0.3).x, at(0.2, 0.3).y);
            compare(models.drawing.acts.length, 0, "one end is no line");
            mouseClick(sheet, at(0.6, 0.5).x, at(0.6, 0.5).y);
            compare(last().kind, "circle");
            close(last(), 0.2, 0.3, 0.6, 0.5);
            // the stand-in photos are 400 x 300
            fuzzyCompare(last().aspect, 4 / 3, 0.01);
        }
        function test_oneDrag() {
            find(win.contentItem, one => one.spoken === "arrow" && one.checkable).press();
            mouseDrag(sheet, at(0.7, 0.2).x, at(0.7, 0.2).y, -0.4 * sheet.width, 0.3 * sheet.height);
            compare(models.drawing.acts.length, 1);
            compare(last().kind, "arrow");
            close(last(), 0.7, 0.2, 0.3, 0.5);
        }
        function test_byKeys() {
            const board = find(win.contentItem, one => one.begun !== undefined && one.step !== undefined);
            board.forceActiveFocus();
            keyClick(Qt.Key_Return);
            for (let i = 0; i < 10; ++i)
                keyClick(Qt.Key_Right);
            keyClick(Qt.Key_Return);
            close(last(), 0.5, 0.5, 0.7, 0.5);
        }
        function test_aRulerCarriesItsLength() {
            find(win.contentItem, one => one.spoken === "ruler" && one.checkable).press();
            waitForRendering(win.contentItem);
            const field = find(win.contentItem, one => one.label !== undefined && one.input !== undefined);
            field.text = "4 3/4 in";
            mouseClick(sheet, at(0.2, 0.8).x, at(0.2, 0.8).y);
            mouseClick(sheet, at(0.5, 0.8).x, at(0.5, 0.8).y);
            compare(last().kind, "ruler");
            compare(last().length, "4 3/4 in");
        }
        function test_waysBack() {
            for (const [word, act] of [["erase last", "eraseLast"], ["erase all", "eraseAll"], ["undo", "undo"]]) {
                find(win.contentItem, one => one.text === word && one.press !== undefined).press();
                compare(last(), act);
            }
        }
        function test_linesShowWhereverThePhotoDoes() {
            win.currentPlace = "finding";
            waitForRendering(win.contentItem);
            tryVerify(() => find(win.contentItem, one => one.draft !== undefined && one.shapes !== undefined && one.shapes.length === 4) !== null);
        }
    }
}
