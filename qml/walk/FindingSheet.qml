// SPDX-License-Identifier: Apache-2.0
// An attention, written down: the same as before or new, what, how bad, where, how much, photos.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

ColumnLayout {
    id: root

    required property Session session
    signal done()

    readonly property WalkModel walk: root.session.walk
    /// Open finding this is about; null for a new one.
    property var old: null
    /// "same", "worse", "better", "gone" or "new"; "" until told.
    property string change: root.walk.openFindings.length === 0 ? "new" : ""
    property string defect: ""
    property int grade: 0

    readonly property bool told: root.change === "new" ? root.defect !== "" && root.grade > 0 : root.change === "gone" || root.grade > 0

    function named(defects: var): var { return defects.map(one => ({ slug: one.slug, name: one.word })) }
    function tell(finding: var, change: string) {
        root.old = finding;
        root.change = change;
        root.grade = change === "same" ? finding.grade : 0;
    }
    function write() {
        root.walk.attention({ point: root.walk.selectedPoint, same: root.old ? root.old.id : "", gone: root.change === "gone", defect: root.defect,
            grade: root.grade, place: place.place, extent: extent.text, note: note.text, photos: photos.photos });
        root.done();
    }

    spacing: 0

    Scroll {
        spacing: 14
        Layout.fillWidth: true
        Layout.fillHeight: true

        BodyText { text: root.walk.title; level: "title"; Layout.fillWidth: true; Layout.topMargin: 6 }
        Repeater {
            model: root.walk.openFindings
            ColumnLayout {
                id: before
                required property var modelData
                spacing: 4
                OpenFinding { finding: before.modelData; Layout.fillWidth: true }
                Choice {
                    answers: [{ slug: "same", name: qsTr("still there, the same") }, { slug: "worse", name: qsTr("worse") },
                        { slug: "better", name: qsTr("better") }, { slug: "gone", name: qsTr("gone") }]
                    label: qsTr("Finding %1 now", "number").arg(before.modelData.number)
                    chosen: root.old && root.old.id === before.modelData.id ? root.change : ""
                    Layout.fillWidth: true
                    onPicked: slug => root.tell(before.modelData, slug)
                }
            }
        }
        Choice {
            visible: root.walk.openFindings.length > 0
            label: qsTr("or")
            answers: [{ slug: "new", name: qsTr("something new here") }]
            chosen: root.change
            Layout.fillWidth: true
            onPicked: { root.old = null; root.change = "new"; root.grade = 0 }
        }
        Choice {
            visible: root.change === "new"
            label: qsTr("What")
            answers: root.named(root.walk.defects)
            chosen: root.defect
            Layout.fillWidth: true
            onPicked: slug => root.defect = slug
        }
        GradeChoice {
            visible: root.change !== "" && root.change !== "gone"
            grades: root.walk.grades
            chosen: root.grade
            least: root.change === "worse" ? Math.min(5, root.old.grade) : 1
            most: root.change === "better" ? Math.max(1, root.old.grade) : 5
            Layout.fillWidth: true
            onPicked: grade => root.grade = grade
        }
        PlaceChoice { id: place; visible: root.change === "new"; rig: root.session.rig; standSlug: root.walk.standSlug; Layout.fillWidth: true }
        Field { id: extent; label: qsTr("How much"); note: qsTr("such as 60 mm, or 2 of 8"); inputMethodHints: Qt.ImhNoPredictiveText; Layout.fillWidth: true }
        Field { id: note; label: qsTr("Note"); Layout.fillWidth: true }
        PhotoChoice { id: photos; Layout.fillWidth: true; }
        BodyText {
            text: root.session.person === "" ? root.session.position.words : qsTr("%1, at %2", "who, where on earth").arg(root.session.person).arg(root.session.position.words)
            level: "small"
            quiet: true
            Layout.fillWidth: true
        }
    }
    Rule { Layout.fillWidth: true }
    ActButton {
        text: root.change === "gone" ? qsTr("Write down: gone") : qsTr("Write down")
        detail: root.told ? "" : root.change === "" ? qsTr("first tell whether it is one of these") : root.change === "new" ? qsTr("first tell what it is and how bad") : qsTr("first tell how bad it is now")
        filled: true
        enabled: root.told
        implicitHeight: Math.max(Tone.markHeight, implicitContentHeight + 20)
        Layout.fillWidth: true
        Layout.margins: 12
        onClicked: root.write()
    }
}
