// SPDX-License-Identifier: Apache-2.0
// Rows for tiles of photos: the first at once, the others a few at a time, so that a whole card of photos
// never holds the page up.
pragma ComponentBehavior: Bound
import QtQuick

QtObject {
    id: root

    /// Addresses, in their order.
    required property var photos
    /// The same as {file}; what is there already stays.
    readonly property ListModel rows: ListModel {}
    readonly property Timer pace: Timer {
        interval: 16
        repeat: true
        running: root.rows.count < root.photos.length
        onTriggered: root.add(2)
    }

    function add(most: int) {
        for (let left = most; left > 0 && root.rows.count < root.photos.length; --left)
            root.rows.append({ file: String(root.photos[root.rows.count]) });
    }
    /// Takes away what is no longer there, and all that follows where the order is another.
    function drop() {
        const wanted = new Set(root.photos.map(one => String(one)));
        for (let i = root.rows.count - 1; i >= 0; --i)
            if (!wanted.has(root.rows.get(i).file)) // qmllint disable
                root.rows.remove(i);
        let same = 0;
        while (same < root.rows.count && root.rows.get(same).file === String(root.photos[same])) // qmllint disable
            ++same;
        if (same < root.rows.count)
            root.rows.remove(same, root.rows.count - same);
    }

    onPhotosChanged: { root.drop(); root.add(6) }
    Component.onCompleted: root.add(6)
}
