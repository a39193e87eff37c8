// SPDX-License-Identifier: Apache-2.0
// A photo by its hash, never a file name; the whole picture is shown, whatever its shape, with what is
// drawn on it. May open.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style

Rectangle {
    id: root

    /// Hash of a stored photo, or a file's address while a finding is written.
    required property string photo
    property string caption: ""
    property bool full: false
    /// Whether a press opens it.
    property bool opens: false
    signal opened(string photo)

    readonly property string words: root.caption === "" ? qsTr("photo") : qsTr("photo: %1").arg(root.caption)
    readonly property var lines: Drawn.of(root.photo)

    implicitWidth: 120
    implicitHeight: 90
    color: Tone.band
    border.width: Tone.hair
    border.color: Tone.line
    Accessible.role: Accessible.Graphic
    Accessible.name: root.words

    Image {
        id: picture
        anchors.fill: parent
        anchors.margins: 1
        asynchronous: true
        fillMode: Image.PreserveAspectFit
        sourceSize.width: root.full ? 1600 : 320
        sourceSize.height: root.full ? 1600 : 320
        source: Picture.of(root.photo, root.full)
    }
    Once {
        wanted: root.lines.length > 0 && picture.status === Image.Ready
        DrawnLines { anchors.centerIn: parent; width: picture.paintedWidth; height: picture.paintedHeight; shapes: root.lines }
    }
    BodyText {
        visible: root.photo === ""
        anchors.centerIn: parent
        width: parent.width - 12
        text: qsTr("no photo")
        level: "small"
        quiet: true
        horizontalAlignment: Text.AlignHCenter
    }
    Once {
        wanted: root.opens && root.photo !== ""
        Press {
            anchors.fill: parent
            spoken: qsTr("%1; opens it", "photo").arg(root.words)
            onClicked: root.opened(root.photo)
        }
    }
}
