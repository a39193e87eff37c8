// SPDX-License-Identifier: Apache-2.0
// Words on the page: wrapped, in the chosen size, read out as they stand.
import QtQuick
import Snugwalk.Style

Text {
    id: root

    /// "body", "small", "head" or "title".
    property string level: "body"
    /// Quiet words explain; they never carry the only copy of a fact.
    property bool quiet: false

    font.family: Tone.words
    font.pixelSize: root.level === "title" ? Tone.title : root.level === "head" ? Tone.head
        : root.level === "small" ? Tone.small : Tone.body
    font.bold: root.level === "title" || root.level === "head"
    color: root.quiet ? Tone.quiet : Tone.ink
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    horizontalAlignment: Text.AlignLeft
    lineHeight: 1.06

    Accessible.role: root.level === "title" || root.level === "head" ? Accessible.Heading : Accessible.StaticText
    Accessible.name: root.text
    Accessible.ignored: root.text === ""
}
