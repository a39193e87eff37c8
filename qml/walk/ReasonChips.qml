// SPDX-License-Identifier: Apache-2.0
// The usual reasons why a line could not be looked at, under the thumb: one press writes one, undo takes it back.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Column {
    id: root

    required property WalkModel walk
    /// Whether it can be put away again; where there is room it stays.
    property bool foldable: true
    signal written()
    signal moreAsked()
    signal folded()

    spacing: 4
    Layout.preferredWidth: 10 // else the chips' widths and this width ask each other

    BodyText { width: root.width; text: qsTr("Could not look, because"); level: "small"; quiet: true }
    Flow {
        id: row
        width: root.width
        spacing: Tone.gap
        Repeater {
            model: root.walk.usualReasons
            Chip {
                required property var modelData
                checkable: false
                width: Math.min(implicitWidth, Math.max(1, row.width))
                text: modelData.text
                spoken: qsTr("could not look: %1", "reason").arg(modelData.text)
                onClicked: {
                    root.walk.couldNotLook(modelData.slug, "");
                    root.written();
                }
            }
        }
        Chip { checkable: false; text: qsTr("another reason"); width: Math.min(implicitWidth, Math.max(1, row.width)); onClicked: root.moreAsked() }
        WordButton { visible: root.foldable; text: qsTr("not now", "put the reasons away"); onClicked: root.folded() }
    }
}
