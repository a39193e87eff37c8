// SPDX-License-Identifier: Apache-2.0
// The place that is open. The home is made at once; the pages behind it are read from the program once the
// first screen is drawn, so that nobody waits for them, or at once where one of them comes first.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.Rig

FocusScope {
    id: root

    required property Session session
    required property string place
    required property string thing
    /// Whether the drawing of the rig stands beside this.
    required property bool wide
    signal went(string place, string thing)
    signal backAsked()
    signal homeAsked()

    readonly property bool home: !root.session.loaded || root.session.hasRig && root.place === "rig"
    /// Whether the first page was shown.
    property bool drawn: false

    /// Takes away what lies over the page; false when nothing does.
    function uncover(): bool { return further.item?.uncover() ?? false } // qmllint disable

    /// Makes the further places: a little in each frame, or now. What was begun the one way is begun anew.
    function make(now: bool) {
        if (further.item)
            return;
        further.active = false; // a Loader that is hurried on forgets what its item was to begin with
        further.asynchronous = !now;
        further.setSource("PlaceView.qml", { session: root.session, place: root.place, thing: root.thing, wide: root.wide });
        further.active = true;
    }

    focus: true
    onHomeChanged: if (!root.home) root.make(true)
    Component.onCompleted: if (!root.home) root.make(true)

    Connections {
        target: root.Window.window
        enabled: !root.drawn && root.session.loaded
        function onFrameSwapped() {
            root.drawn = true;
            Qt.callLater(root.make, false); // qmllint disable
        }
    }
    Once { wanted: !root.session.loaded; BodyText { text: qsTr("Opening the logbook …"); quiet: true; padding: Tone.margin } }
    Once {
        wanted: root.session.loaded && root.home && !root.wide
        RigPage {
            anchors.fill: root
            rig: root.session.rig
            footer: root.session.footer
            onOpened: id => root.went("finding", id)
            onSettingsAsked: root.went("settings", "")
            onWhyAsked: root.went("state", "")
            onEditAsked: root.went("edit_rig", "")
        }
    }
    Once {
        wanted: root.session.loaded && root.home && root.wide
        Scroll {
            anchors.fill: root
            Item { implicitHeight: 10 }
            FindingList { rig: root.session.rig; Layout.fillWidth: true; onOpened: id => root.went("finding", id) }
        }
    }
    Loader {
        id: further
        anchors.fill: parent
        focus: !root.home
        visible: !root.home
        active: false
    }
    Binding { target: further.item; property: "thing"; value: root.thing }
    Binding { target: further.item; property: "place"; value: root.place }
    Binding { target: further.item; property: "wide"; value: root.wide }
    Connections {
        target: further.item
        function onWent(place: string, thing: string) { root.went(place, thing) } // qmllint disable
        function onBackAsked() { root.backAsked() } // qmllint disable
        function onHomeAsked() { root.homeAsked() } // qmllint disable
    }
}
