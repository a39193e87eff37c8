// SPDX-License-Identifier: Apache-2.0
// Home: the drawing of the rig. On a wide screen the list is left to the place beside it.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property RigModel rig
    property bool listed: true
    property string stand: ""
    property string footer: ""
    signal opened(string findingId)
    signal settingsAsked()
    signal whyAsked()
    signal editAsked()

    // beside a place the drawing is seen whole, and the grounds of the state come under it
    readonly property bool walking: root.stand !== ""

    widest: root.width
    held: board.held
    // told once the page has settled, for the faces' heights follow from it
    Binding { target: board; property: "mostHeight"; value: root.listed ? 320 : Math.max(90, Math.floor((root.height - head.implicitHeight - board.around - 40) / 2)); delayed: true }
    Item { implicitHeight: 4 }
    RigHead { id: head; rig: root.rig; brief: !root.listed; Layout.fillWidth: true; onSettingsAsked: root.settingsAsked(); onWhyAsked: root.whyAsked(); onEditAsked: root.editAsked() }
    RigBoard { id: board; rig: root.rig; stand: root.stand; Layout.fillWidth: true; onOpened: id => root.opened(id) }
    // beside another place the drawing comes first, and its words follow
    Once { wanted: !root.listed && !root.walking && !board.ever; RigWords { rig: root.rig; Layout.fillWidth: true; Layout.topMargin: Tone.gap; onWhyAsked: root.whyAsked(); onEditAsked: root.editAsked() } }
    Once {
        wanted: board.ever
        EverList { rig: root.rig; chosen: board.chosen; Layout.fillWidth: true; Layout.topMargin: Tone.gap; onOpened: id => root.opened(id); onShown: row => Qt.callLater(root.reveal, row) } // qmllint disable
    }
    FindingList { visible: root.listed && !board.ever; rig: root.rig; Layout.fillWidth: true; onOpened: id => root.opened(id) }
    BodyText { visible: root.footer !== ""; text: root.footer; level: "small"; quiet: true; Layout.fillWidth: true; Layout.topMargin: Tone.gap }
}
