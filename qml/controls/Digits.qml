// SPDX-License-Identifier: Apache-2.0
// A whole number on a drawing or in a column: every figure as wide as the next. Figures with a point
// are set in words' type, for here the point takes a figure's width.
import QtQuick
import Snugwalk.Style

Text {
    id: root

    property int size: Tone.small

    font.family: Tone.digits
    font.pixelSize: root.size
    color: Tone.ink
    textFormat: Text.PlainText
    Accessible.role: Accessible.StaticText
    Accessible.name: root.text
}
