// SPDX-License-Identifier: Apache-2.0
// The owner's side of a meeting: role, code, the other device's answer, six digits, enrolled.
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

    readonly property ShareModel share: root.sync.share
    readonly property string step: root.share.step
    readonly property var roles: root.share.roles
    readonly property string about: root.roles.find(one => one.slug === role.chosen)?.about ?? ""

    Component.onCompleted: root.share.clear()

    spacing: 12

    BodyText { text: qsTr("Share %1", "rig").arg(root.share.rigName); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText {
        visible: root.step === "" && !root.sync.shared
        text: qsTr("From then on what is written about this rig goes to every store you exchange with: signed by the device, and sealed so that only enrolled devices read it.")
        Layout.fillWidth: true
    }
    Choice {
        id: role
        visible: root.step === ""
        label: qsTr("What the other device may do")
        answers: root.roles
        Layout.fillWidth: true
        onPicked: slug => chosen = slug
    }
    BodyText { visible: root.step === "" && text !== ""; text: root.about; Layout.fillWidth: true }
    Field {
        id: until
        visible: root.step === ""
        label: qsTr("Until, a date such as 2027-03-31; may stay empty")
        note: qsTr("A hint to that device only. What ends its access is revoking it.")
        Layout.fillWidth: true
    }
    ActButton {
        visible: root.step === ""
        text: qsTr("Show the code")
        enabled: role.chosen !== "" && !root.share.busy
        filled: true
        Layout.fillWidth: true
        onClicked: root.share.offer(role.chosen, until.text)
    }

    Once {
        wanted: root.step === "offer"
        ColumnLayout {
            spacing: 12
            Layout.fillWidth: true
            BodyText { text: qsTr("Stands until %1.", "time").arg(root.share.until); font.bold: true; Layout.fillWidth: true }
            BodyText { text: qsTr("Show it to nobody but the person who gets it. On the other device: exchange, take part in a rig. There, read the picture by camera, or type or paste the words."); Layout.fillWidth: true }
            QrPicture { visible: root.share.picture.length > 0; rows: root.share.picture; Layout.preferredWidth: Math.min(320, root.width - 2 * Tone.margin); Layout.alignment: Qt.AlignHCenter }
            CodeWords { words: root.share.words; Layout.fillWidth: true }
            Rule { Layout.fillWidth: true }
            ReadCode { reader: root.sync.reader; camera: root.camera; Layout.fillWidth: true; onFound: words => answer.text = words }
            WordsField { id: answer; label: qsTr("What the other device shows now, as words"); Layout.fillWidth: true }
            ActButton { text: qsTr("Take the answer"); enabled: answer.text !== "" && !root.share.busy; filled: true; Layout.fillWidth: true; onClicked: root.share.takeAnswer(answer.text) }
        }
    }
    Once {
        wanted: root.step === "compare"
        ColumnLayout {
            spacing: 12
            Layout.fillWidth: true
            SixDigits { code: root.share.code; Layout.fillWidth: true }
            BodyText { text: qsTr("Other digits there: somebody stands between. Then enroll nobody, and start again."); Layout.fillWidth: true }
            LabelRow { label: qsTr("Device"); value: root.share.device; Layout.fillWidth: true }
            LabelRow { label: qsTr("Asks to be"); value: root.share.wanted; Layout.fillWidth: true }
            LabelRow { label: qsTr("Will be"); value: root.share.role; strong: true; Layout.fillWidth: true }
            ActButton { text: qsTr("The same digits: enroll it"); enabled: !root.share.busy; filled: true; Layout.fillWidth: true; onClicked: root.share.confirm() }
        }
    }
    Once {
        wanted: root.step === "enrolled"
        ColumnLayout {
            spacing: 12
            Layout.fillWidth: true
            BodyText { text: qsTr("%1 is enrolled as %2.", "device, role").arg(root.share.device).arg(root.share.role); level: "head"; Layout.fillWidth: true }
            BodyText { text: qsTr("Exchange with a store now. The other device then finds the rig at the same store."); Layout.fillWidth: true }
            ActButton { text: qsTr("To the stores"); filled: true; Layout.fillWidth: true; onClicked: root.done() }
        }
    }
    FaultBlock { fault: root.share.fault; Layout.fillWidth: true }
    WordButton { visible: root.step !== ""; text: qsTr("start again", "with another code"); enabled: !root.share.busy; onClicked: root.share.clear() }
}
