// SPDX-License-Identifier: Apache-2.0
// Taking photos. On the ground the last photo of the finding is shown faint over what the camera sees;
// off the ground the photos come now and the marks after, with nothing to aim by.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Item {
    id: root

    required property CameraModel camera
    /// The finding's last photo by its hash, "" for none or off the ground.
    property string faint: ""
    /// Over another page: the way back to it is here.
    property bool inner: false
    /// "photos now, marks after": what is taken waits.
    property bool plain: false
    signal taken(string file)
    signal done()

    property bool guided: true
    readonly property bool wide: root.width > root.height
    readonly property int count: root.camera.waiting.length

    Component.onCompleted: root.camera.start()
    Component.onDestruction: root.camera.stop()
    Connections {
        target: root.camera
        function onTaken(file: string) { root.taken(file) }
    }

    Rectangle { anchors.fill: parent; color: Tone.paper }
    GridLayout {
        anchors { fill: parent; margins: Tone.margin; topMargin: 6; bottomMargin: Tone.gap }
        columns: root.wide ? 2 : 1
        rowSpacing: Tone.gap
        columnSpacing: Tone.margin
        BodyText {
            text: root.plain ? qsTr("Photos now, marks after") : qsTr("Photo of the finding")
            level: "head"
            Layout.fillWidth: true
            Layout.columnSpan: root.wide ? 2 : 1
        }
        Rectangle {
            visible: root.camera.there
            color: Tone.band
            border.width: Tone.hair
            border.color: Tone.line
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: 120
            CameraView {
                anchors { fill: parent; margins: 1 }
                camera: root.camera
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("what the camera sees")
            }
            Image {
                anchors { fill: parent; margins: 1 }
                visible: root.guided && root.faint !== ""
                opacity: 0.4
                asynchronous: true
                fillMode: Image.PreserveAspectFit
                sourceSize { width: 1600; height: 1600 }
                source: root.faint === "" ? "" : "image://photo/full/" + root.faint
            }
            BodyText { visible: !root.camera.live; anchors.centerIn: parent; width: parent.width - 24; text: qsTr("The camera is starting …"); quiet: true; horizontalAlignment: Text.AlignHCenter }
        }
        Scroll {
            Layout.fillWidth: !root.wide || !root.camera.there
            Layout.preferredWidth: root.wide && root.camera.there ? Math.max(Tone.px(250), root.width * 0.3) : -1
            Layout.fillHeight: root.wide || !root.camera.there
            Layout.preferredHeight: root.wide ? -1 : Math.min(side.implicitHeight + Tone.margin + 1, root.height * 0.6)
            Layout.leftMargin: -Tone.margin
            Layout.rightMargin: -Tone.margin
            ColumnLayout {
                id: side
                spacing: Tone.gap
                Layout.fillWidth: true
                ActButton {
                    visible: root.camera.there
                    text: qsTr("Take the photo")
                    filled: true
                    enabled: root.camera.live && !root.camera.busy
                    implicitHeight: Tone.markHeight
                    Layout.fillWidth: true
                    onClicked: root.camera.take()
                }
                Choice {
                    visible: root.camera.hasTorch
                    label: qsTr("Light of the camera")
                    answers: [{ slug: "on", name: qsTr("on", "the light") }, { slug: "off", name: qsTr("off", "the light") }]
                    chosen: root.camera.torch ? "on" : "off"
                    Layout.fillWidth: true
                    onPicked: slug => root.camera.torch = slug === "on"
                }
                Choice {
                    visible: root.camera.there && root.faint !== ""
                    label: qsTr("The last photo, faint, to stand where it was taken")
                    answers: [{ slug: "on", name: qsTr("shown", "the faint photo") }, { slug: "off", name: qsTr("left out", "the faint photo") }]
                    chosen: root.guided ? "on" : "off"
                    Layout.fillWidth: true
                    onPicked: slug => root.guided = slug === "on"
                }
                BodyText {
                    visible: root.plain
                    text: qsTr("Both hands for the ladder: take them here, or from a camera on a pole by file. Mark with both feet on the ground.")
                    Layout.fillWidth: true
                }
                FileWord { visible: root.plain; Layout.fillWidth: true; onChosen: files => root.camera.keep(files) }
                WaitingPhotos { visible: root.plain; camera: root.camera; Layout.fillWidth: true }
                ActButton { visible: root.inner; text: qsTr("Back to the finding"); size: Tone.body; Layout.fillWidth: true; onClicked: root.done() }
            }
        }
    }
}
