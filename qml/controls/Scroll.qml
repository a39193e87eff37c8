// SPDX-License-Identifier: Apache-2.0
// A page longer than the screen. Follows the keyboard's focus; with gloves on it turns by pressing.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style

Item {
    id: root

    default property alias content: column.data
    property alias flick: flick
    property real spacing: Tone.gap
    /// Widest column that eyes and fingers follow; a drawing may ask for more.
    property real widest: Tone.px(720)
    /// While something on the page is dragged by itself.
    property bool held: false
    readonly property bool more: flick.contentHeight > flick.height + 1
    readonly property Item focused: Window.activeFocusItem

    function reveal(item: Item) {
        const top = item.mapToItem(column, 0, 0).y;
        if (top < flick.contentY)
            flick.contentY = Math.max(0, top - 12);
        else if (top + item.height > flick.contentY + flick.height)
            flick.contentY = Math.min(top, top + item.height - flick.height + 12);
    }
    function holds(item: Item): bool {
        for (let up = item; up; up = up.parent)
            if (up === column)
                return true;
        return false;
    }

    implicitHeight: column.implicitHeight
    implicitWidth: column.implicitWidth
    onHeightChanged: if (root.focused && root.holds(root.focused)) Qt.callLater(root.reveal, root.focused) // qmllint disable
    onFocusedChanged: if (root.focused && root.holds(root.focused)) root.reveal(root.focused)

    Flickable {
        id: flick
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: turns.visible ? turns.top : parent.bottom }
        contentWidth: width
        contentHeight: column.implicitHeight + Tone.margin
        interactive: !Tone.gloves && root.more && !root.held
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        ColumnLayout {
            id: column
            x: Tone.margin
            width: Math.min(flick.width - 2 * Tone.margin, root.widest)
            spacing: root.spacing
        }
    }
    Rectangle {
        visible: root.more
        anchors.right: parent.right
        width: 3
        y: flick.contentY / flick.contentHeight * flick.height
        height: flick.height * Math.min(1, flick.height / flick.contentHeight)
        color: Tone.quiet
    }
    MoreWord {
        id: turns
        scroll: flick
        whole: root.height
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Tone.gap }
    }
}
