// SPDX-License-Identifier: Apache-2.0
// A stretch of the tape before or after the current line; it slides as lines are marked.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Models

ListView {
    id: root

    required property WalkModel walk
    /// True for the two lines to come, false for those done.
    required property bool ahead
    property int lines: 2

    readonly property int wanted: root.ahead ? root.walk.current + 1 : root.walk.current - 1
    property real lineHeight: Tone.px(30)
    // the line's height follows the list's, so it is told once the list has settled
    Binding { target: root; property: "lineHeight"; value: root.currentItem ? root.currentItem.height : Tone.px(30); delayed: true }

    visible: root.wanted >= 0 && root.wanted < root.count
    implicitHeight: root.lines * Tone.px(34)
    model: root.walk.tape
    interactive: false
    clip: true
    keyNavigationEnabled: false
    currentIndex: root.wanted
    highlightRangeMode: ListView.StrictlyEnforceRange
    highlightMoveDuration: Tone.slide
    highlightResizeDuration: 0
    preferredHighlightBegin: root.ahead ? 0 : root.height - root.lineHeight
    preferredHighlightEnd: root.ahead ? root.lineHeight : root.height
    delegate: TapeRow {
        required property int index
        width: ListView.view.width
        ahead: root.ahead
        // only whole lines of this side are shown
        // the list is null while the page goes away
        readonly property bool whole: ListView.view !== null && y >= ListView.view.contentY - 1 && y + height <= ListView.view.contentY + ListView.view.height + 1
        opacity: whole && (root.ahead ? index > root.walk.current : index < root.walk.current) ? 1 : 0
    }
}
