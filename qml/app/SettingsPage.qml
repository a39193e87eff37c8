// SPDX-License-Identifier: Apache-2.0
// How this person wants it: who, language, units, light, words, gloves; which rig and which logbook.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property Session session
    signal newRigAsked()
    signal pointsAsked()
    signal syncAsked()
    signal aboutAsked()

    readonly property var sizes: [1, 1.25, 1.5, 2]

    function percent(sizes: var): var {
        return sizes.map(size => ({ slug: String(size), name: qsTr("%1 %", "size of words").arg(size * 100) }));
    }

    spacing: 16

    BodyText { text: qsTr("Settings"); level: "title"; Layout.fillWidth: true; Layout.topMargin: 4 }
    Field {
        label: qsTr("Who looks", "name written with each mark")
        text: root.session.person
        Layout.fillWidth: true
        onEdited: text => root.session.person = text
    }
    Choice {
        label: qsTr("Light")
        answers: [{ slug: "day", name: qsTr("day", "theme") }, { slug: "night", name: qsTr("night", "theme") }, { slug: "sun", name: qsTr("sun, black on white", "theme") }]
        chosen: root.session.theme
        Layout.fillWidth: true
        onPicked: slug => root.session.theme = slug
    }
    Choice {
        label: qsTr("Hands; gloves get larger places to press")
        answers: [{ slug: "off", name: qsTr("bare hands") }, { slug: "on", name: qsTr("gloves") }]
        chosen: root.session.gloves ? "on" : "off"
        Layout.fillWidth: true
        onPicked: slug => root.session.gloves = slug === "on"
    }
    Choice {
        visible: root.session.canBuzz
        label: qsTr("A buzz in the hand when a mark is written")
        answers: [{ slug: "on", name: qsTr("on", "setting") }, { slug: "off", name: qsTr("off", "setting") }]
        chosen: root.session.buzz ? "on" : "off"
        Layout.fillWidth: true
        onPicked: slug => root.session.buzz = slug === "on"
    }
    Choice {
        visible: root.session.canSound
        label: qsTr("A soft tick when a mark is written")
        answers: [{ slug: "on", name: qsTr("on", "setting") }, { slug: "off", name: qsTr("off", "setting") }]
        chosen: root.session.sound ? "on" : "off"
        Layout.fillWidth: true
        onPicked: slug => root.session.sound = slug === "on"
    }
    Choice {
        label: qsTr("Size of words")
        answers: root.percent(root.sizes)
        chosen: String(root.session.textScale)
        Layout.fillWidth: true
        onPicked: slug => root.session.textScale = Number(slug)
    }
    Choice {
        label: qsTr("Units shown; typing takes either")
        answers: [{ slug: "si", name: qsTr("metres, kilometres, kPa, °C") }, { slug: "us", name: qsTr("feet, miles, psi, °F") }]
        chosen: root.session.units
        Layout.fillWidth: true
        onPicked: slug => root.session.units = slug
    }
    Choice {
        label: qsTr("Language")
        answers: Array.from(root.session.languages)
        chosen: root.session.language
        Layout.fillWidth: true
        onPicked: slug => root.session.language = slug
    }
    RigsBlock { session: root.session; Layout.fillWidth: true; onNewRigAsked: root.newRigAsked() }
    Once { wanted: root.session.hasRig; WordButton { text: qsTr("points of this rig: add, hide, how often"); Layout.fillWidth: true; onClicked: root.pointsAsked() } }
    WordButton { text: qsTr("exchange with other devices"); Layout.fillWidth: true; onClicked: root.syncAsked() }
    BooksBlock { books: root.session.books; Layout.fillWidth: true }
    WordButton { text: qsTr("about: version, data, licences"); Layout.fillWidth: true; onClicked: root.aboutAsked() }
}
