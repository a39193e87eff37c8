// SPDX-License-Identifier: Apache-2.0
// Why a point could not be looked at; one press writes it, undo takes it back.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property WalkModel walk
    signal done()

    BodyText { text: qsTr("Could not look, because"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { text: root.walk.title; quiet: true; Layout.fillWidth: true }
    Repeater {
        model: root.walk.reasons
        ActButton {
            required property var modelData
            text: modelData.text
            size: Tone.body
            Layout.fillWidth: true
            onClicked: {
                root.walk.couldNotLook(modelData.slug, note.text);
                root.done();
            }
        }
    }
    Field { id: note; label: qsTr("Note, if it helps"); Layout.fillWidth: true }
}
