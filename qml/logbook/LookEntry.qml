// SPDX-License-Identifier: Apache-2.0
// One look at a finding: when, by whom, how bad, how much, with its photos.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {date, by, gradeText, extentText, note, photos}
    required property var look
    signal photoAsked(string photo)

    spacing: 2

    BodyText { text: root.look.by ? qsTr("%1, by %2", "date, person").arg(root.look.date).arg(root.look.by) : root.look.date; level: "small"; quiet: true; Layout.fillWidth: true }
    BodyText { text: Format.join([root.look.gradeText, root.look.extentText], "; "); Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: root.look.note ?? ""; level: "small"; Layout.fillWidth: true }
    Flow {
        id: strip
        visible: (root.look.photos?.length ?? 0) > 0
        spacing: Tone.gap
        Layout.fillWidth: true
        Repeater {
            model: root.look.photos ?? []
            PhotoTile {
                required property string modelData
                width: Math.min(strip.width, Tone.px(180))
                height: width * 0.75
                photo: modelData
                caption: root.look.date
                opens: true
                onOpened: photo => root.photoAsked(photo)
            }
        }
    }
}
