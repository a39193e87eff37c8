// SPDX-License-Identifier: Apache-2.0
// A wide act that asks where a file is to be written.
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

ActButton {
    id: root

    required property var filters
    required property string ending
    /// An address to begin with.
    required property string suggested
    signal chosen(string file)

    size: Tone.body
    onClicked: pick.ask()

    FilePick { id: pick; over: root; title: root.text; filters: root.filters; saves: true; ending: root.ending; suggested: root.suggested; onChosen: file => root.chosen(file) }
}
