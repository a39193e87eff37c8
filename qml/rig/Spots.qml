// SPDX-License-Identifier: Apache-2.0
// The findings of a model as a plain list, so that a drawing can lay out all its balloons at once.
pragma ComponentBehavior: Bound
import QtQuick
import QtQml.Models

Instantiator {
    id: root

    property var all: []

    function collect() {
        const found = [];
        for (let i = 0; i < root.count; ++i)
            found.push(root.objectAt(i));
        root.all = found.filter(one => one);
    }

    delegate: QtObject {
        required property string findingId
        required property int number
        required property string kind
        required property string title
        required property string callText
        required property string face
        required property real x
        required property real y
        required property real z
    }
    // one change of many rows is collected once
    onObjectAdded: Qt.callLater(root.collect) // qmllint disable
    onObjectRemoved: Qt.callLater(root.collect) // qmllint disable
}
