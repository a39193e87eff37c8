// SPDX-License-Identifier: Apache-2.0
// Which points the due list shows and in which order: one word that unfolds into three questions.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Column {
    id: root

    required property DueModel due
    property bool unfolded: false

    readonly property var spans: [
        { slug: "all", name: qsTr("all of them", "due points") }, { slug: "past", name: qsTr("past due") },
        { slug: "month", name: qsTr("within a month") }, { slug: "season", name: qsTr("within a season") }]
    readonly property var orders: [{ slug: "date", name: qsTr("by date") }, { slug: "concern", name: qsTr("by concern") }]
    readonly property var zones: [{ slug: "", name: qsTr("every zone") }, ...root.due.zones]
    readonly property bool whole: root.due.span === "all" && root.due.zone === ""

    function named(list: var, slug: string): string { return list.find(one => one.slug === slug)?.name ?? "" }

    spacing: 6

    WordButton {
        width: Math.min(implicitWidth, root.width)
        text: qsTr("showing %1, %2, %3", "which points, zone, order").arg(root.named(root.spans, root.due.span)).arg(root.named(root.zones, root.due.zone)).arg(root.named(root.orders, root.due.order))
        spoken: root.unfolded ? qsTr("%1; folds the choices away").arg(text) : qsTr("%1; unfolds the choices").arg(text)
        strong: !root.whole
        onClicked: root.unfolded = !root.unfolded
    }
    Once {
        wanted: root.unfolded
        Column {
            width: root.width
            spacing: 10
            Choice { width: parent.width; label: qsTr("Which"); answers: root.spans; chosen: root.due.span; onPicked: slug => root.due.span = slug }
            Choice { width: parent.width; label: qsTr("In which order"); answers: root.orders; chosen: root.due.order; onPicked: slug => root.due.order = slug }
            Choice { width: parent.width; label: qsTr("Zone"); answers: root.zones; chosen: root.due.zone; onPicked: slug => root.due.zone = slug }
        }
    }
}
