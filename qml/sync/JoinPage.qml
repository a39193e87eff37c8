// SPDX-License-Identifier: Apache-2.0
// The new device's side of a meeting: the owner's words, what it asks to be, its answer and six digits.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property SyncModel sync
    required property CameraModel camera
    signal done()
    signal recoverAsked()

    readonly property ShareModel share: root.sync.share
    readonly property bool answered: root.share.step === "answered"

    Component.onCompleted: root.share.clear()

    spacing: 12

    BodyText { text: qsTr("Take part in a rig"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: !root.answered; text: qsTr("The owner's device shows a code under share. Read its picture by camera, or type or paste its words."); Layout.fillWidth: true }
    ReadCode { visible: reader.able && !root.answered; reader: root.sync.reader; camera: root.camera; Layout.fillWidth: true; onFound: said => words.text = said }
    WordsField { id: words; visible: !root.answered; label: qsTr("Words of the owner's device"); Layout.fillWidth: true }
    Choice {
        id: role
        visible: !root.answered
        label: qsTr("What this device asks to be; the owner decides")
        answers: root.share.roles
        Layout.fillWidth: true
        onPicked: slug => chosen = slug
    }
    ActButton {
        visible: !root.answered
        text: qsTr("Answer")
        enabled: words.text !== "" && role.chosen !== "" && !root.share.busy
        filled: true
        Layout.fillWidth: true
        onClicked: root.share.answer(words.text, role.chosen)
    }
    FaultBlock { fault: root.share.fault; Layout.fillWidth: true }
    WordButton { visible: !root.answered; text: qsTr("every device is lost, the words on paper are left"); Layout.fillWidth: true; onClicked: root.recoverAsked() }
    Once {
        wanted: root.answered
        ColumnLayout {
            spacing: 12
            Layout.fillWidth: true
            SixDigits { code: root.share.code; Layout.fillWidth: true }
            BodyText { text: qsTr("The owner reads the picture below, or types its words, and sees six digits too. They must be these."); Layout.fillWidth: true }
            QrPicture { visible: root.share.picture.length > 0; rows: root.share.picture; Layout.preferredWidth: Math.min(320, root.width - 2 * Tone.margin); Layout.alignment: Qt.AlignHCenter }
            CodeWords { words: root.share.words; Layout.fillWidth: true }
            BodyText { text: qsTr("Once the owner has enrolled this device and exchanged, exchange with the same store: the rig comes from there."); Layout.fillWidth: true }
            ActButton { text: qsTr("To the stores"); filled: true; Layout.fillWidth: true; onClicked: root.done() }
            WordButton { text: qsTr("start again", "with another code"); onClicked: root.share.clear() }
        }
    }
}
