// SPDX-License-Identifier: Apache-2.0
// A number on a drawing or in a column: every figure as wide as the next.
import QtQuick
import Snugwalk.Style

Text {
    id: root

    property int size: Tone.small

    font.family: Tone.digits
    font.pixelSize: root.size
    font.letterSpacing: -0.05 * root.size // its point is as wide as a figure
    color: Tone.ink
    textFormat: Text.PlainText
    Accessible.role: Accessible.StaticText
    Accessible.name: root.text
}
