// SPDX-License-Identifier: Apache-2.0
// A QR picture: dark on white in every light, with the four quiet modules around that ISO/IEC 18004 asks for.
import QtQuick
import Snugwalk.Style

Rectangle {
    id: root

    /// A row a text, a character a module, 1 is dark.
    required property var rows
    readonly property int quiet: 4
    readonly property int modules: root.rows.length + 2 * root.quiet

    implicitWidth: 300
    implicitHeight: root.width
    color: "#FFFFFF"
    border.width: Tone.hair
    border.color: Tone.line
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("The code as a picture; the words below say the same")

    onRowsChanged: picture.requestPaint()

    Canvas {
        id: picture
        anchors.fill: parent
        onPaint: {
            const c = picture.getContext("2d"), cell = Math.max(1, Math.floor(picture.width / root.modules));
            const edge = Math.floor((picture.width - cell * root.rows.length) / 2);
            c.reset();
            c.fillStyle = "#000000";
            for (let y = 0; y < root.rows.length; ++y)
                for (let x = 0; x < root.rows[y].length; ++x)
                    if (root.rows[y][x] === "1")
                        c.fillRect(edge + x * cell, edge + y * cell, cell, cell);
        }
    }
}
