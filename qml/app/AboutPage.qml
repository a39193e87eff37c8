// SPDX-License-Identifier: Apache-2.0
// What this is, whose data and whose work it stands on, each with its licence.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

Scroll {
    id: root

    property string footer: ""

    readonly property var data: [
        qsTr("Temperature and rain: Legates and Willmott 1989 and CRU CL 2.0 (New, Lister, Hulme, Makin 2002), as mapped by Marble; adapted. Licence: CC BY-SA 3.0."),
        qsTr("Heights and sea air: ETOPO5 and COADS, NOAA, as packed with Ferret."),
        qsTr("Coastline: made with Natural Earth, public domain."),
        qsTr("Place names: GeoNames (geonames.org), a choice of them with rounded coordinates. Licence: CC BY 4.0, creativecommons.org/licenses/by/4.0."),
        qsTr("The invented rig, its tracks and photos: made for this program, CC0 1.0.")]
    // as the packages' own copyright files say
    readonly property var works: [
        { name: "Qt 6", licence: "LGPL-3.0" }, { name: "SQLite", licence: qsTr("public domain") }, { name: "libsodium", licence: "ISC" },
        { name: "Zstandard", licence: "BSD-3-Clause" }, { name: "libzip", licence: "BSD-3-Clause" }, { name: "zlib", licence: "Zlib" },
        { name: "zxing-cpp", licence: "Apache-2.0" }, { name: "GeographicLib", licence: "MIT" }, { name: "JSON for Modern C++", licence: "MIT" },
        { name: "Expat", licence: "MIT" }, { name: "libexif", licence: "LGPL-2.1" }, { name: "libsecret", licence: "LGPL-2.1" }, { name: "Atkinson Hyperlegible Next", licence: "OFL-1.1" }, { name: "B612 Mono", licence: "OFL-1.1" }]

    spacing: 6

    BodyText { text: qsTr("About"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
    BodyText { text: Format.join(["Snugwalk", Qt.application.version], " "); level: "head"; Layout.fillWidth: true }
    BodyText { text: qsTr("Looks after a rig without a network: what was looked at, by whom, what was found. Nothing leaves this device unless you exchange or copy it."); Layout.fillWidth: true }
    BodyText { text: qsTr("Licence of the program: Apache 2.0. It comes without any warranty."); Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: root.footer; level: "small"; quiet: true; Layout.fillWidth: true }
    Rule { Layout.fillWidth: true; Layout.topMargin: Tone.gap }
    BodyText { text: qsTr("Where data come from"); level: "head"; Layout.fillWidth: true }
    Repeater {
        model: root.data
        BodyText { required property string modelData; text: modelData; level: "small"; Layout.fillWidth: true }
    }
    Rule { Layout.fillWidth: true; Layout.topMargin: Tone.gap }
    BodyText { text: qsTr("What it is built with, under these licences"); level: "head"; Layout.fillWidth: true }
    Repeater {
        model: root.works
        LabelRow { required property var modelData; label: modelData.name; value: modelData.licence; Layout.fillWidth: true }
    }
}
