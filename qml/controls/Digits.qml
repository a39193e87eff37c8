// SPDX-License-Identifier: Apache-2.0
// A number on a drawing or in a column: every figure as wide as the next.
import QtQuick
import Snugwalk.Style

Text {
    id: root

    font.family: Tone.digits
    font.pixelSize: Tone.small
    color: Tone.ink
    textFormat: Text.PlainText
    Accessible.role: Accessible.StaticText
    Accessible.name: root.text
}
