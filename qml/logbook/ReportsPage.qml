// SPDX-License-Identifier: Apache-2.0
// A report: which kind, how its pages look, what leaves with it, and the file it becomes.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property ReportModel reports
    /// Slug of a kind to begin with; "" to choose one first.
    property string kind: ""

    property bool choosing: root.kind === ""
    property int page: 0
    readonly property var fault: root.reports.fault
    readonly property bool failed: (root.fault.what ?? "") !== ""
    readonly property bool beside: root.width >= Tone.px(560)
    readonly property var kinds: root.reports.kinds
    readonly property var pages: root.reports.pages
    readonly property int count: root.pages.length

    function pick(kind: string) {
        root.reports.kind = kind;
        root.page = 0;
        root.choosing = false;
        root.flick.contentY = 0;
    }
    function named(): string { return root.kinds.find(one => one.slug === root.reports.kind)?.name ?? "" }

    onCountChanged: root.page = Math.max(0, Math.min(root.page, root.count - 1))
    Component.onCompleted: {
        if (root.kind !== "")
            root.reports.kind = root.kind;
        root.reports.open();
    }
    Component.onDestruction: root.reports.close()

    spacing: 8

    BodyText { text: root.choosing ? qsTr("Reports") : root.named(); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { visible: root.choosing; text: qsTr("What should it tell?"); quiet: true; Layout.fillWidth: true }
    Repeater {
        model: root.choosing ? root.kinds : []
        ActButton {
            required property var modelData
            text: modelData.name
            size: Tone.body
            Layout.fillWidth: true
            onClicked: root.pick(modelData.slug)
        }
    }
    WordButton { visible: !root.choosing; text: qsTr("another report"); Layout.fillWidth: true; onClicked: root.choosing = true }
    Once {
        wanted: !root.choosing && root.failed
        ColumnLayout {
            spacing: 2
            Layout.fillWidth: true
            BodyText { text: root.fault.what ?? ""; level: "head"; Layout.fillWidth: true; Accessible.role: Accessible.AlertMessage }
            BodyText { visible: text !== ""; text: root.fault.act ?? ""; font.bold: true; Layout.fillWidth: true }
        }
    }
    Once {
        wanted: !root.choosing
        ReportScope { reports: root.reports; Layout.fillWidth: true; Layout.fillHeight: false }
    }
    BodyText { visible: !root.choosing && root.reports.busy; text: qsTr("Drawing the pages …"); quiet: true; Layout.fillWidth: true }
    GridLayout {
        visible: !root.choosing
        columns: root.beside ? 2 : 1
        columnSpacing: 24
        rowSpacing: 8
        Layout.fillWidth: true

        ColumnLayout {
            visible: root.count > 0
            spacing: 4
            Layout.fillWidth: true
            Layout.preferredWidth: 10
            Layout.alignment: Qt.AlignTop
            Rectangle {
                color: "white"
                border.width: Tone.hair
                border.color: Tone.quiet
                Layout.fillWidth: true
                Layout.preferredHeight: sheet.height + 2
                Accessible.role: Accessible.Document
                Accessible.name: qsTr("%1, page %2 of %3", "title of a report").arg(root.reports.title).arg(root.page + 1).arg(root.reports.pageCount)
                Accessible.description: root.reports.words
                Image {
                    id: sheet
                    x: 1
                    y: 1
                    width: parent.width - 2
                    height: implicitWidth > 0 ? width * implicitHeight / implicitWidth : width * 1.4
                    asynchronous: true
                    sourceSize.width: width > 0 ? Math.ceil(width * Screen.devicePixelRatio) : 0 // the provider scales better than the screen
                    source: root.page < root.count ? String(root.pages[root.page]) : ""
                }
            }
            RowLayout {
                spacing: 4
                Layout.fillWidth: true
                WordButton { text: qsTr("page before"); enabled: root.page > 0; Layout.fillWidth: true; onClicked: root.page -= 1 }
                BodyText { text: qsTr("Page %1 of %2").arg(root.page + 1).arg(root.reports.pageCount); level: "small"; quiet: true; horizontalAlignment: Text.AlignHCenter; Layout.fillWidth: true }
                WordButton { text: qsTr("next page"); enabled: root.page < root.count - 1; Layout.fillWidth: true; onClicked: root.page += 1 }
            }
        }
        ColumnLayout {
            spacing: 8
            Layout.fillWidth: true
            Layout.preferredWidth: 10
            Layout.alignment: Qt.AlignTop
            Repeater {
                model: root.reports.forms
                SaveAct {
                    required property var modelData
                    required property int index
                    text: qsTr("Save: %1", "kind of file").arg(modelData.name)
                    filled: index === 0
                    enabled: !(root?.reports?.busy ?? true) && (root.count > 0 || modelData.slug === "ics")
                    filters: [modelData.filter]
                    ending: modelData.slug
                    suggested: root?.reports?.suggested(modelData.slug) ?? ""
                    Layout.fillWidth: true
                    onChosen: file => root.reports.save(modelData.slug, file)
                }
            }
            BodyText { visible: root.reports.saved !== ""; text: qsTr("Written: %1", "file name").arg(root.reports.saved); font.bold: true; Layout.fillWidth: true; Accessible.role: Accessible.AlertMessage }
            Choice {
                label: qsTr("Sheets of paper")
                answers: [{ slug: "a4", name: qsTr("A4") }, { slug: "letter", name: qsTr("Letter", "paper size") }]
                chosen: root.reports.sheet
                Layout.fillWidth: true
                onPicked: slug => root.reports.sheet = slug
            }
            Choice {
                label: qsTr("Where it was")
                answers: [{ slug: "left_out", name: qsTr("left out", "of a report") }, { slug: "coarse", name: qsTr("to about 5 km", "how exact a place is told") }, { slug: "exact", name: qsTr("exact", "how exact a place is told") }]
                chosen: root.reports.place
                Layout.fillWidth: true
                onPicked: slug => root.reports.place = slug
            }
            Choice {
                label: qsTr("What the camera wrote into photos: place, time, its number")
                answers: [{ slug: "out", name: qsTr("left out", "of a report") }, { slug: "kept", name: qsTr("kept, in the web page", "data in photos") }]
                chosen: root.reports.ownData ? "kept" : "out"
                Layout.fillWidth: true
                onPicked: slug => root.reports.ownData = slug === "kept"
            }
            ReportSigners { reports: root.reports; Layout.fillWidth: true; Layout.preferredWidth: 10 }
            BodyText { text: qsTr("The file lies where you put it; nothing is sent anywhere."); level: "small"; quiet: true; Layout.fillWidth: true }
        }
    }
}
