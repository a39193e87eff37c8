// SPDX-License-Identifier: Apache-2.0
// A finding that is known here, and what became of it: still there, worse, better, gone; a mended one
// asks whether the mend holds.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.Photo
import Snugwalk.Rig

ColumnLayout {
    id: root

    /// {id, point, number, words, grade, gradeText, grades, place, photo, since, kind, status, mended}
    required property var finding
    required property CameraModel camera
    required property RigModel rig
    /// Where it is, as `Spots.all` gives it; null when that is not known or not to be drawn.
    property var spot: null
    signal cameraAsked(Item photos)
    signal drawAsked(string file)

    /// "same", "worse", "better", "again", "gone"; "" while nothing is told of it.
    property string change: ""
    property int grade: 0
    readonly property bool mended: root.finding.status === "mended"
    readonly property bool there: root.change !== "" && root.change !== "gone"
    /// Whether what is told is told in full.
    readonly property bool whole: !root.there || root.grade > 0
    readonly property var answers: root.mended
        ? [{ slug: "gone", name: qsTr("mended, it holds") }, { slug: "again", name: qsTr("there again") }]
        : [{ slug: "same", name: qsTr("still there, the same") }, { slug: "worse", name: qsTr("worse") }, { slug: "better", name: qsTr("better") }, { slug: "gone", name: qsTr("gone") }]

    function answer(lines: var): var {
        return { point: root.finding.point, same: root.finding.id, gone: root.change === "gone", grade: root.grade, extent: extent.text, note: note.text,
            photos: photos.photos.map(file => ({ file: file, lines: lines(file) })) };
    }

    spacing: 6

    OpenFinding { finding: root.finding; Layout.fillWidth: true }
    RigView {
        visible: root.spot !== null
        rig: root.rig.drawn
        face: root.spot?.face ?? "left"
        noseLeft: root.rig.kerbLeft
        spots: root.spot ? [root.spot] : []
        label: root.rig.faceName(face)
        measured: false
        numbered: false
        mostHeight: 96
        Layout.fillWidth: true
    }
    Choice {
        answers: root.answers
        label: root.mended ? qsTr("Finding %1, mended: now", "number").arg(root.finding.number) : qsTr("Finding %1 now", "number").arg(root.finding.number)
        chosen: root.change
        Layout.fillWidth: true
        onPicked: slug => {
            root.change = root.change === slug ? "" : slug;
            root.grade = root.change === "same" ? root.finding.grade : 0;
        }
    }
    GradeChoice {
        visible: root.there
        grades: root.finding.grades ?? []
        chosen: root.grade
        least: root.change === "worse" ? Math.min(5, root.finding.grade) : 1
        most: root.change === "better" ? Math.max(1, root.finding.grade) : 5
        Layout.fillWidth: true
        onPicked: grade => root.grade = grade
    }
    Field { id: extent; visible: root.there; label: qsTr("How much"); note: qsTr("such as 60 mm, or 2 of 8"); inputMethodHints: Qt.ImhNoPredictiveText; Layout.fillWidth: true }
    Field { id: note; visible: root.change !== ""; label: qsTr("Note"); Layout.fillWidth: true }
    PhotoChoice {
        id: photos
        visible: root.change !== ""
        camera: root.camera
        Layout.fillWidth: true
        onCameraAsked: root.cameraAsked(photos)
        onDrawAsked: file => root.drawAsked(file)
    }
    Rule { Layout.fillWidth: true }
}
