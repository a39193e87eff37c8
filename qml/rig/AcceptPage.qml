// SPDX-License-Identifier: Apache-2.0
// One person's own decision to move once although one point could not be looked at. Nothing is filled
// in and nothing is chosen beforehand.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property Session session
    /// Slug; "" for the first hold that can be accepted.
    property string point: ""
    signal done()

    readonly property var hold: Array.from(root.session.rig.holds).find(one => one.acceptable && (root.point === "" || one.point === root.point)) ?? null
    readonly property bool named: root.session.person !== ""
    readonly property bool whole: root.hold !== null && root.named && because.text.trim() !== "" && knowing.text.trim() !== ""

    spacing: 12

    BodyText { visible: root.hold === null; text: qsTr("One's own decision"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: root.hold === null; text: qsTr("Nothing is on hold that could be accepted. A hold for something found cannot be accepted by anyone."); Layout.fillWidth: true }
    ColumnLayout {
        visible: root.hold !== null
        spacing: 12
        Layout.fillWidth: true
        Layout.topMargin: 6
        BodyText { text: qsTr("One's own decision"); level: "title"; Layout.fillWidth: true }
        BodyText { text: qsTr("I could not look at %1 because %2. I know that %3 may follow. I move it once, today, on my own decision.", "point, reason, what may follow").arg(root.hold?.title ?? "").arg(because.text.trim() || "…").arg(knowing.text.trim() || "…"); level: "head"; Layout.fillWidth: true }
        Field { id: because; label: qsTr("because", "I could not look because"); Layout.fillWidth: true }
        Field { id: knowing; label: qsTr("what may follow"); Layout.fillWidth: true }
        BodyText { text: root.named ? qsTr("Written down as decided by %1. It ends when the rig is uncoupled, after 24 hours at the latest, and stands on the slip.").arg(root.session.person) : qsTr("First write in the settings who looks."); level: "small"; quiet: true; Layout.fillWidth: true }
        ActButton { text: qsTr("Do not move it"); size: Tone.body; implicitHeight: Tone.markHeight; Layout.fillWidth: true; onClicked: root.done() }
        ActButton {
            text: qsTr("I decide so")
            size: Tone.body
            enabled: root.whole
            implicitHeight: Tone.markHeight
            Layout.fillWidth: true
            onClicked: {
                root.session.rig.accept(root.hold.point, because.text, knowing.text);
                root.done();
            }
        }
    }
}
