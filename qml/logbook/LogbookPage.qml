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
    signal mapAsked()
    signal takenBack()
    signal reportsAsked()
    signal wentAsked()

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
        list.contentY = -list.topMargin;
    }

    spacing: 6
    onShelfChanged: root.fill()
    Component.onCompleted: root.fill()

    Instantiator {
        id: walks
        model: root.book.walks
        delegate: QtObject { required property string walkId }
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
        topMargin: rowsHead.height
        // Qt 6.4 makes no bound component for a header
        LogbookHead { id: rowsHead; parent: list.contentItem; y: -height; width: list.width; side: Tone.margin; shelf: root.shelf; waiting: root.waiting; onPicked: slug => root.shelf = slug; onExchangeAsked: root.exchangeAsked(); onSearchAsked: root.searchAsked(); onMapAsked: root.mapAsked(); onReportsAsked: root.reportsAsked(); onWentAsked: root.wentAsked(); none: list.count > 0 ? "" : root.shelf === "walks" ? qsTr("No walk yet.") : root.shelf === "trips" ? qsTr("No trip yet.") : qsTr("No mend yet."); onHeightChanged: if (list.contentY <= 0) list.contentY = -height }
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
        topMargin: photosHead.height
        LogbookHead { id: photosHead; parent: strip.contentItem; y: -height; width: strip.width; side: 4; shelf: root.shelf; waiting: root.waiting; onPicked: slug => root.shelf = slug; onExchangeAsked: root.exchangeAsked(); onSearchAsked: root.searchAsked(); onMapAsked: root.mapAsked(); onReportsAsked: root.reportsAsked(); onWentAsked: root.wentAsked(); none: strip.count > 0 ? "" : qsTr("No photo yet."); onHeightChanged: if (strip.contentY <= 0) strip.contentY = -height }
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
