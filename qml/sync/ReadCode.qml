// SPDX-License-Identifier: Apache-2.0
// Reads the code on the other device's screen: by the camera, or out of a picture of it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import QtQml.Models
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property CodeReader reader
    required property CameraModel camera
    /// The bytes of the code as words.
    signal found(string words)

    property bool looking: false

    visible: root.reader.able
    spacing: 4

    Connections {
        target: root.reader
        function onFound(words: string) { root.looking = false; root.found(words) }
    }

    WordButton { visible: !root.looking; text: qsTr("read the picture by camera"); Layout.fillWidth: true; onClicked: { root.reader.clear(); root.looking = true } }
    WordButton { visible: !root.looking; text: qsTr("read it from a picture file"); Layout.fillWidth: true; onClicked: file.active = true }
    Once {
        wanted: root.looking
        ColumnLayout {
            spacing: 4
            Layout.fillWidth: true
            Component.onCompleted: root.camera.start()
            Component.onDestruction: root.camera.stop()
            Connections {
                target: root.camera
                function onFrameChanged() { root.reader.look(root.camera) }
            }
            BodyText { visible: !root.camera.there; text: qsTr("This device has no camera that can be used. Type the words, or read a picture file."); Layout.fillWidth: true }
            Rectangle {
                visible: root.camera.there
                color: Tone.band
                border.width: Tone.hair
                border.color: Tone.line
                Layout.fillWidth: true
                Layout.preferredHeight: Math.min(root.width * 0.75, Tone.px(360))
                CameraView {
                    anchors { fill: parent; margins: 1 }
                    camera: root.camera
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("what the camera sees")
                }
            }
            BodyText { visible: root.camera.there; text: root.camera.live ? qsTr("Hold it straight on, so that the whole picture is seen.") : qsTr("The camera is starting …"); level: "small"; quiet: true; Layout.fillWidth: true }
            WordButton { text: qsTr("leave the camera"); Layout.fillWidth: true; onClicked: root.looking = false }
        }
    }
    FaultBlock { fault: root.reader.fault; Layout.fillWidth: true }

    // made only when asked for
    Instantiator {
        id: file
        active: false
        delegate: FileDialog {
            parentWindow: root.Window.window
            title: qsTr("Picture of the code")
            nameFilters: [qsTr("Photos (*.jpg *.jpeg *.png)")]
            Component.onCompleted: open()
            onAccepted: { root.reader.lookAtFile(String(selectedFile)); file.active = false }
            onRejected: file.active = false
        }
    }
}
