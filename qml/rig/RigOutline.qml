// SPDX-License-Identifier: Apache-2.0
// The lines of one face of the rig as the core gives them, in the theme's ink.
import QtQuick
import Snugwalk.Style
import Snugwalk.Sheet

OutlineItem {
    id: root

    /// Where the sheet lies: {scale in pixels a metre, x, y}.
    required property var box

    metre: root.box.scale
    origin: Qt.point(root.box.x, root.box.y)
    ink: Tone.ink
    quiet: Tone.quiet
    paper: Tone.paper
    heavy: Tone.stroke
    thin: Tone.stroke / 2
    Accessible.ignored: true
}
