// SPDX-License-Identifier: Apache-2.0
// One leg of a plan to type: days, place, roof, distance, road.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

Column {
    id: root

    /// Offered days, year-month-day.
    required property string firstDay
    required property string lastDay
    /// {slug, name}
    required property var places
    required property var roads
    /// {field, what, act}
    required property var problems
    signal sent(var leg)

    readonly property bool elsewhere: stay.chosen === "" || stay.chosen === "typed"

    function fault(field: string): string {
        const one = root.problems.find(p => p.field === field);
        return one ? one.what + " " + one.act : "";
    }
    function clear() {
        from.text = Qt.binding(() => root.firstDay);
        until.text = Qt.binding(() => root.lastDay);
        place.text = distance.text = stay.chosen = road.chosen = "";
        roof.chosen = "open";
    }
    function send() {
        root.sent({ from: from.text, until: until.text, stay: root.elsewhere ? "" : stay.chosen, place: place.text,
            covered: roof.chosen === "roof", distance: distance.text, road: road.chosen });
    }

    spacing: 10

    Field { id: from; label: qsTr("From, year-month-day"); text: root.firstDay; problem: root.fault("from"); width: root.width }
    Field { id: until; label: qsTr("Until, the last day"); text: root.lastDay; problem: root.fault("until"); width: root.width }
    Choice {
        id: stay
        visible: root.places.length > 0
        label: qsTr("Where it stands")
        answers: [...root.places, { slug: "typed", name: qsTr("somewhere else") }]
        width: root.width
        onPicked: slug => chosen = slug
    }
    Field {
        id: place
        visible: root.elsewhere
        label: qsTr("Latitude, longitude in degrees")
        note: qsTr("such as -44.27, 170.10 or 44.27 S, 170.10 E")
        problem: root.fault("place")
        width: root.width
    }
    Choice {
        id: roof
        label: qsTr("Under what")
        answers: [{ slug: "open", name: qsTr("in the open") }, { slug: "roof", name: qsTr("under a roof or cover") }]
        chosen: "open"
        width: root.width
        onPicked: slug => chosen = slug
    }
    Field {
        id: distance
        label: qsTr("Driven in that time; empty for none")
        note: Format.units === "us" ? qsTr("such as 750 mi") : qsTr("such as 1200 km")
        problem: root.fault("distance")
        width: root.width
    }
    Choice { id: road; label: qsTr("On which road"); answers: root.roads; width: root.width; onPicked: slug => chosen = slug }
    ActButton { text: qsTr("Work it out"); detail: qsTr("nothing is written"); filled: true; width: root.width; onClicked: root.send() }
}
