// SPDX-License-Identifier: Apache-2.0
// The record: walks, trips, mends, photos. Two walks can be laid side by side.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQml.Models
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property BookModel book
    /// What waits to be exchanged, in a few words; "" for nothing.
    property string waiting: ""
    signal compareAsked()
    signal photoAsked(string photo)
    signal tripAsked(string trip)
    signal importAsked()
    /// What this device wrote last outside a walk; "" when nothing can be taken back.
    property string lastAct: ""
    signal exchangeAsked()
    signal searchAsked()
    signal takenBack()
    signal reportsAsked()

    property string shelf: "walks"
    property var pair: []

    function pick(walk: string) {
        root.pair = root.pair.indexOf(walk) >= 0 ? root.pair.filter(one => one !== walk) : root.pair.concat([walk]).slice(-2);
    }
    function compare() {
        // the list is newest first, so the older of two stands further down
        const two = root.pair.length === 2;
        root.book.compare(two ? root.older() : "", two ? root.pair.find(one => one !== root.older()) : "");
        root.compareAsked();
    }
    function older(): string {
        for (let i = walks.count - 1; i >= 0; --i)
            if (root.pair.indexOf(walks.objectAt(i)?.walkId) >= 0)
                return walks.objectAt(i).walkId;
        return "";
    }

    /// Rows of one kind must never meet the other kind's delegate, so the list is emptied in between.
    function fill() {
        list.model = null;
        list.delegate = root.shelf === "walks" ? walk : root.shelf === "trips" ? trip : mend;
        list.model = root.shelf === "walks" ? root.book.walks : root.shelf === "trips" ? root.book.trips : root.book.mends;
    }

    spacing: 6
    onShelfChanged: root.fill()
    Component.onCompleted: root.fill()

    Instantiator {
        id: walks
        model: root.book.walks
        delegate: QtObject { required property string walkId }
    }
    Flow {
        spacing: 12
        Layout.fillWidth: true
        Layout.leftMargin: Tone.margin
        Layout.rightMargin: Tone.margin - 4
        Layout.topMargin: 6
        BodyText { text: qsTr("Logbook"); level: "title"; height: Math.max(implicitHeight, Tone.target); verticalAlignment: Text.AlignVCenter }
        WordButton { text: root.waiting === "" ? qsTr("exchange", "with other devices") : qsTr("exchange: %1", "what waits").arg(root.waiting); onClicked: root.exchangeAsked() }
        WordButton { text: qsTr("search"); onClicked: root.searchAsked() }
        WordButton { text: qsTr("reports"); onClicked: root.reportsAsked() }
    }
    Choice {
        answers: [{ slug: "walks", name: qsTr("walks") }, { slug: "trips", name: qsTr("trips") }, { slug: "mends", name: qsTr("mends") }, { slug: "photos", name: qsTr("photos") }]
        chosen: root.shelf
        Layout.fillWidth: true
        Layout.leftMargin: Tone.margin
        Layout.rightMargin: Tone.margin
        onPicked: slug => root.shelf = slug
    }
    ListView {
        id: list
        visible: root.shelf !== "photos"
        clip: true
        interactive: !Tone.gloves
        boundsBehavior: Flickable.StopAtBounds
        activeFocusOnTab: root.shelf === "mends"
        Layout.fillWidth: true
        Layout.fillHeight: true
        BodyText {
            visible: list.count === 0
            anchors { left: parent.left; right: parent.right; top: parent.top; margins: Tone.margin }
            text: root.shelf === "walks" ? qsTr("No walk yet.") : root.shelf === "trips" ? qsTr("No trip yet.") : qsTr("No mend yet.")
            quiet: true
        }
    }
    PhotoStrip {
        id: strip
        visible: root.shelf === "photos"
        model: root.book.photos
        onPhotoAsked: photo => root.photoAsked(photo)
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.leftMargin: Tone.margin - 4
        Layout.rightMargin: Tone.margin - 4
        BodyText { visible: strip.count === 0; text: qsTr("No photo yet."); quiet: true; x: 4 }
    }
    MoreWord { scroll: strip.visible ? strip : list; whole: 0; Layout.fillWidth: true; Layout.margins: Tone.gap }
    WordButton { visible: root.lastAct !== ""; text: qsTr("take back: %1", "what was written last").arg(root.lastAct); Layout.fillWidth: true; Layout.leftMargin: Tone.gap; Layout.rightMargin: Tone.gap; onClicked: root.takenBack() }
    ActButton {
        visible: root.shelf === "walks" && list.count > 1
        text: root.pair.length === 2 ? qsTr("Compare these two") : qsTr("Compare the last two")
        detail: root.pair.length === 2 || root.height < Tone.px(480) ? "" : root.pair.length === 1 ? qsTr("or press one more") : qsTr("or press two of them")
        size: Tone.body
        Layout.fillWidth: true
        Layout.margins: 12
        onClicked: root.compare()
    }
    ActButton {
        visible: root.shelf === "trips"
        text: qsTr("Take a file in")
        detail: root.height < Tone.px(480) ? "" : qsTr("a track, a log of shaking, weather")
        size: Tone.body
        Layout.fillWidth: true
        Layout.margins: 12
        onClicked: root.importAsked()
    }

    Component { id: walk; WalkRow { width: ListView.view.width; chosen: root.pair.indexOf(walkId) >= 0; onPicked: id => root.pick(id) } }
    Component { id: trip; TripRow { width: ListView.view.width; onOpened: trip => root.tripAsked(trip) } }
    Component { id: mend; MendRow { width: ListView.view.width } }
}
