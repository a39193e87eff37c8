// SPDX-License-Identifier: Apache-2.0
// Three walks, two trips, one mend, four photos.
import QtQml

QtObject {
    id: root

    property WalkListModel walks: WalkListModel {}
    property TripListModel trips: TripListModel {}
    property MendListModel mends: MendListModel {}
    property ComparisonModel comparison: ComparisonModel {}
    property var photos: [{ hash: "a", caption: "Belly pan", date: "12 January" }, { hash: "b", caption: "Belly pan", date: "12 March" }, { hash: "c", caption: "Middle vent", date: "12 March" }, { hash: "d", caption: "Front cap", date: "2 November" }]
    property bool comparable: true
    property string compareTitle: ""
    property string compareSentence: ""
    property string comparePair: ""
    property var rigChanges: []
    property var asked: []

    function compare(thenId: string, nowId: string) {
        asked = asked.concat([[thenId, nowId]]);
        compareTitle = "12 January and 12 March";
        compareSentence = "2 new, 2 worse, 1 mended, 1 gone without a mend. 127 the same, 7 not looked at.";
        comparePair = "Held against the last full round.";
        rigChanges = ["Added to the rig since: solar.", "Taken from the rig since: awning.", "No longer fitted: Awning arms."];
        comparison.rows = [["Belly pan sheet and fasteners", "mend", "hold", "worse", "worse, 6 to 14 mm", "underside, 4.5 m from the front", ["a"], ["b"]],
            ["Front cap seam", "pass", "watch", "new", "new", "hairline, 90 mm", [], ["d"]], ["Rear marker lamp", "mend", "pass", "mended", "mended 3 February", "", [], []],
            ["Tread", "pass", "pass", "same", "same", "Tread depth wheel 1L: 4.1 mm, was 5.3 mm", [], [], "faster than expected: 1.2 mm less, 0.4 mm was to be expected"], ["Window seal, rear", "watch", "pass", "gone", "gone, no mend: look again", "", [], []], ["Inner sidewall, rear tire", "pass", "could_not_look", "not_looked", "not looked at", "", [], []]]
            .map(row => ({ point: row[0], title: row[0], thenMark: row[1], nowMark: row[2], change: row[3], changeText: row[4], detail: row[5], thenPhotos: row[6], nowPhotos: row[7], faster: row[8] ?? "" }));
    }

    Component.onCompleted: {
        walks.rows = [
            { walkId: "w3", date: "12 March, 08:10", kindName: "Full round", by: "A.", counts: "131 of 138 looked at, 4 attentions, 3 could not look", finished: true, isOpen: false },
            { walkId: "w2", date: "3 February, 17:40", kindName: "After the road", by: "B.", counts: "24 of 24 looked at", finished: true, isOpen: false },
            { walkId: "w1", date: "12 January, 09:05", kindName: "Full round", by: "A.", counts: "136 of 138 looked at, 3 attentions", finished: true, isOpen: false }];
        trips.rows = [
            { tripId: "t1", title: "To the coast", date: "14 January", length: "412 km", roadText: "412 km that shook like 1 310 km", wayText: "from: near Twizel; to: 7 km north of Oamaru", note: "gravel after the pass", points: [[-44.2, 170.1], [-44.3, 170.3], [-44.6, 170.2], [-44.9, 170.7], [-45.1, 170.9], [-45.4, 170.8]].map(p => ({ lat: p[0], lon: p[1] })) },
            { tripId: "t2", title: "Weigh bridge and back", date: "2 November", length: "38 km", roadText: "smooth all the way", wayText: "", note: "", points: [[-44.2, 170.1], [-44.25, 170.0], [-44.3, 170.05]].map(p => ({ lat: p[0], lon: p[1] })) }];
        mends.rows = [{ date: "3 February", what: "Rear marker lamp: replaced, sealed again", cost: "NZ$ 38.00" }];
    }
}
