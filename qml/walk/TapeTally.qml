// SPDX-License-Identifier: Apache-2.0
// What the tape holds in numbers, and the lines that got no look: for the end of a walk.
pragma ComponentBehavior: Bound
import QtQuick
import QtQml.Models

Instantiator {
    id: root

    property var rows: []
    readonly property var unseen: root.rows.filter(one => one.mark === "not_looked" || one.mark === "could_not_look")
    readonly property int passed: root.having(["pass"])
    readonly property int found: root.having(["attention", "watch", "mend", "hold"])
    readonly property int absent: root.having(["not_fitted"])

    function having(marks: var): int {
        return root.rows.filter(one => marks.indexOf(one.mark) >= 0).length;
    }
    function collect() {
        const all = [];
        for (let i = 0; i < root.count; ++i)
            all.push(root.objectAt(i));
        root.rows = all.filter(one => one);
    }

    delegate: QtObject {
        required property int line
        required property string title
        required property string standSlug
        required property string standName
        required property string mark
        required property string summary
    }
    // one change of many rows is collected once
    onObjectAdded: Qt.callLater(root.collect) // qmllint disable
    onObjectRemoved: Qt.callLater(root.collect) // qmllint disable
}
