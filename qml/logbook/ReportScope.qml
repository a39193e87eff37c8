// SPDX-License-Identifier: Apache-2.0
// What a report is about: which walk, against which, which findings, and how to get at the rig.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property ReportModel reports
    /// Which list is unfolded: "walk", "other", "findings", or "".
    property string open: ""
    /// Walks shown before the older ones are asked for.
    property int most: 6
    readonly property var site: root.reports.site
    readonly property var walks: root.reports.walks
    readonly property var others: root.reports.others
    readonly property var findings: root.reports.findings
    readonly property var chosen: root.reports.chosen

    function nameIn(list: var, slug: string): string { return Array.from(list).find(one => one.slug === slug)?.name ?? "" }
    function unfold(what: string) {
        root.open = root.open === what ? "" : what;
        root.most = 6;
    }

    spacing: 4
    visible: root.walks.length > 0 || root.findings.length > 0 || root.reports.hasSite

    component Named: WordButton { Layout.fillWidth: true }
    component Listed: Choice { Layout.fillWidth: true }

    Named {
        visible: root.walks.length > 0
        text: qsTr("The walk: %1").arg(root.nameIn(root.walks, root.reports.walk))
        onClicked: root.unfold("walk")
    }
    Once {
        wanted: root.open === "walk"
        Listed { answers: Array.from(root.walks).slice(0, root.most); chosen: root.reports.walk; onPicked: slug => { root.reports.walk = slug; root.open = ""; } }
    }
    Named {
        visible: root.others.length > 0
        text: qsTr("Against: %1", "the earlier walk").arg(root.nameIn(root.others, root.reports.other))
        onClicked: root.unfold("other")
    }
    Once {
        wanted: root.open === "other"
        Listed { answers: Array.from(root.others).slice(0, root.most); chosen: root.reports.other; onPicked: slug => { root.reports.other = slug; root.open = ""; } }
    }
    Named {
        visible: (root.open === "walk" && root.walks.length > root.most) || (root.open === "other" && root.others.length > root.most)
        text: qsTr("older ones", "walks")
        onClicked: root.most += 12
    }
    Named {
        visible: root.findings.length > 0
        text: root.chosen.length === 0 ? qsTr("Findings: all that suit") : qsTr("Findings: %n chosen", "", root.chosen.length)
        onClicked: root.unfold("findings")
    }
    Once {
        wanted: root.open === "findings"
        Chooser {
            answers: root.findings
            chosen: root.chosen
            Layout.fillWidth: true
            onFlipped: ids => root.reports.chosen = ids
        }
    }
    Once {
        wanted: root.reports.hasSite
        ColumnLayout {
            spacing: 8
            Layout.fillWidth: true
            Field { label: qsTr("Where it stands, how to get there"); text: root.site.access ?? ""; Layout.fillWidth: true; onEdited: text => root.reports.setSite("access", text) }
            Field { label: qsTr("Power at the place"); text: root.site.power ?? ""; Layout.fillWidth: true; onEdited: text => root.reports.setSite("power", text) }
            Field { label: qsTr("Key, and who has it"); text: root.site.key ?? ""; Layout.fillWidth: true; onEdited: text => root.reports.setSite("key", text) }
        }
    }
}
