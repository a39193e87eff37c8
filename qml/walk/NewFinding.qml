// SPDX-License-Identifier: Apache-2.0
// Something that was not here before: which point, what, how bad, where, how much, photos.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models
import Snugwalk.Photo

ColumnLayout {
    id: root

    required property Session session
    signal cameraAsked(Item photos)
    signal drawAsked(string file)

    property string defect: ""
    property int grade: 0
    readonly property WalkModel walk: root.session.walk
    readonly property bool several: root.walk.points.length > 1
    readonly property string point: root.several ? root.walk.selectedPoint : root.walk.points[0]?.slug ?? ""
    readonly property bool whole: root.point !== "" && root.defect !== "" && root.grade > 0
    /// What is to be told first; "" when all is.
    readonly property string missing: root.point === "" ? qsTr("first tell which of these it is") : root.whole ? "" : qsTr("first tell what it is and how bad")

    function named(list: var): var { return list.map(one => ({ slug: one.slug, name: one.word ?? one.title })) }
    function answer(lines: var): var {
        return { point: root.point, same: "", gone: false, defect: root.defect, grade: root.grade, place: place.place, extent: extent.text, note: note.text,
            photos: photos.photos.map(file => ({ file: file, lines: lines(file) })) };
    }

    spacing: 14
    onPointChanged: { root.defect = ""; root.grade = 0 }

    Choice {
        visible: root.several
        label: qsTr("Which", "of the points of a line")
        answers: root.named(root.walk.points)
        chosen: root.point
        Layout.fillWidth: true
        onPicked: slug => root.walk.selectPoint(slug)
    }
    Choice {
        visible: root.point !== ""
        label: qsTr("What")
        answers: root.named(root.walk.defects)
        chosen: root.defect
        Layout.fillWidth: true
        onPicked: slug => root.defect = slug
    }
    GradeChoice { visible: root.point !== ""; grades: root.walk.grades; chosen: root.grade; Layout.fillWidth: true; onPicked: grade => root.grade = grade }
    PlaceChoice { id: place; rig: root.session.rig; standSlug: root.walk.standSlug; Layout.fillWidth: true }
    Field { id: extent; label: qsTr("How much"); note: qsTr("such as 60 mm, or 2 of 8"); inputMethodHints: Qt.ImhNoPredictiveText; Layout.fillWidth: true }
    Field { id: note; label: qsTr("Note"); Layout.fillWidth: true }
    PhotoChoice { id: photos; camera: root.session.camera; Layout.fillWidth: true; onCameraAsked: root.cameraAsked(photos); onDrawAsked: file => root.drawAsked(file) }
}
