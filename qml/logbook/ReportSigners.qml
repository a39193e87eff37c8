// SPDX-License-Identifier: Apache-2.0
// Who may sign a report on the screen, one line each.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

// A plain column: a layout keeps the height that its words had while it was narrow.
Column {
    id: root

    required property ReportModel reports
    /// The line that is signed now; -1 for none.
    property int line: -1

    spacing: 4
    visible: root.reports.signers.length > 0

    Repeater {
        model: root.reports.signers
        Column {
            id: one
            required property var modelData
            required property int index
            width: root.width
            WordButton {
                visible: root.line !== one.index
                width: one.width
                text: one.modelData.signed ? qsTr("take the signature away: %1", "who signed").arg(one.modelData.name) : qsTr("sign on the screen: %1", "who signs").arg(one.modelData.name)
                onClicked: one.modelData.signed ? root.reports.unsign(one.index) : root.line = one.index
            }
            Once {
                wanted: root.line === one.index
                SignPad {
                    who: one.modelData.name
                    width: one.width
                    onSignedNow: strokes => { root.line = -1; root.reports.sign(one.index, strokes); }
                    onGaveUp: root.line = -1
                }
            }
        }
    }
    BodyText { visible: root.reports.isSigned; width: root.width; text: qsTr("What was signed stays as it stood. Choosing anything else here takes the signatures away."); level: "small"; quiet: true }
}
