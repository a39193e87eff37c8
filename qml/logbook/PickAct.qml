// SPDX-License-Identifier: Apache-2.0
// A wide act that asks for one file.
import QtQuick
import Snugwalk.Controls

ActButton {
    id: root

    required property var filters
    signal chosen(string file)

    filled: true
    onClicked: pick.ask()

    FilePick { id: pick; over: root; title: root.text; filters: root.filters; onChosen: file => root.chosen(file) }
}
