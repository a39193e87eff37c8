// SPDX-License-Identifier: Apache-2.0
// The line at hand: what to look at and how, what was found here before, what to measure.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls
import Snugwalk.Models

Scroll {
    id: root

    required property WalkModel walk
    property var answers: ({})
    signal photoAsked(string photo)
    signal trendAsked(string point)
    /// A reading is at hand: its field.
    signal entered(Item field)

    readonly property var choices: root.withAll({ slug: "", title: qsTr("all of them", "points of one line"), state: "" }, root.walk.points)

    // a list that only counts anew what was typed must not take the field from under the finger
    property var readings: []
    property string known: ""
    readonly property var asked: root.walk.readings
    onAskedChanged: root.take()
    Component.onCompleted: root.take()
    function take() {
        const all = Array.from(root.asked), shape = JSON.stringify(all.map(one => Object.assign({}, one, { typed: null })));
        if (shape === root.known)
            return;
        root.known = shape;
        root.readings = all;
    }

    function withAll(all: var, points: var): var { return [all, ...points] }

    spacing: 6

    BodyText { text: root.walk.title; font.pixelSize: Tone.px(24); level: "head"; Layout.fillWidth: true; Layout.topMargin: 10 }
    Flow {
        visible: root.walk.points.length > 1
        spacing: 6
        Layout.fillWidth: true
        Repeater {
            model: root.walk.points.length > 1 ? root.choices : []
            Chip {
                id: point
                required property var modelData
                width: Math.min(implicitWidth, root.width - 2 * Tone.margin)
                text: modelData.title
                checked: root.walk.selectedPoint === modelData.slug
                spoken: shape.words === "" || modelData.slug === "" ? text : qsTr("%1: %2", "point: state").arg(text).arg(shape.words)
                onClicked: root.walk.selectPoint(modelData.slug)
                onToggled: checked = Qt.binding(() => root.walk.selectedPoint === modelData.slug)
                leftPadding: modelData.slug === "" ? 12 : Tone.px(20) + 18
                Glyph { id: shape; x: 10; anchors.verticalCenter: parent.verticalCenter; size: Tone.px(20); kind: point.modelData.state; ink: point.checked ? Tone.paper : Tone.ink; Accessible.ignored: true }
            }
        }
    }
    BodyText { visible: text !== ""; text: root.walk.look; Layout.fillWidth: true }
    BodyText { visible: root.walk.passText !== ""; text: qsTr("Pass: %1", "what it takes").arg(root.walk.passText); Layout.fillWidth: true }
    LastTime {
        last: root.walk.lastTime
        pictured: root.walk.openFindings.length === 0
        Layout.fillWidth: true
        onPhotoAsked: photo => root.photoAsked(photo)
    }
    Repeater {
        model: root.walk.openFindings
        OpenFinding {
            required property var modelData
            finding: modelData
            opens: true
            onPhotoAsked: photo => root.photoAsked(photo)
            Layout.fillWidth: true
        }
    }
    Repeater {
        model: root.readings
        ReadingEntry {
            id: entry
            required property var modelData
            reading: modelData
            answers: root.answers
            Layout.fillWidth: true
            onTrendAsked: root.trendAsked(modelData.point)
            onEntered: field => root.entered(field)
            onTyped: (place, text) => root.walk.setReading(modelData.slug, place, text)
        }
    }
}
