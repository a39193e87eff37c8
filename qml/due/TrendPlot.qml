// SPDX-License-Identifier: Apache-2.0
// One reading over all walks: dots, the limit as a heavy dashed line, and where the line through the dots
// meets it. Told by shape and stroke, so that it reads without colour and in the sun.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Snugwalk.Style
import Snugwalk.Controls

Item {
    id: root

    /// {points, before: [{day, value, leftOut}], low, high, line: [{day, value}], early, likely, late,
    /// firstDay, lastDay, least, most, ticks: [{value, text}], dates: [{day, text}], limits: [{value, text}],
    /// spoken}; days from today, NaN where there is none.
    required property var trend
    property real mostHeight: Tone.px(220)

    readonly property real side: Math.min(root.width * 0.45, widest.implicitWidth + 10)
    readonly property real lower: Tone.px(24)
    readonly property real across: Math.max(1, root.width - root.side - 10)
    readonly property real up: Math.max(1, root.height - root.lower - Tone.px(12))
    readonly property real brow: Tone.px(10)
    readonly property bool crossing: !isNaN(root.trend.likely ?? NaN)
    readonly property real limit: isNaN(root.trend.low ?? NaN) ? root.trend.high ?? NaN : root.trend.low

    function atDay(day: real): real { return root.side + (day - root.trend.firstDay) / Math.max(1, root.trend.lastDay - root.trend.firstDay) * root.across }
    function atValue(value: real): real { return root.brow + (1 - (value - root.trend.least) / Math.max(1e-12, root.trend.most - root.trend.least)) * root.up }
    function path(points: var): var { return points.map(one => Qt.point(root.atDay(one.day), root.atValue(one.value))) }

    implicitHeight: root.mostHeight
    Accessible.role: Accessible.Graphic
    Accessible.name: root.trend.spoken ?? ""

    BodyText { id: widest; visible: false; level: "small"; wrapMode: Text.NoWrap; text: root.trend.ticks.reduce((most, one) => one.text.length > most.length ? one.text : most, "") }

    Repeater {
        model: root.trend.ticks
        Item {
            id: tick
            required property var modelData
            readonly property real down: Math.round(root.atValue(modelData.value))
            Rectangle { x: root.side; y: tick.down; width: root.across; height: Tone.hair; color: Tone.line; opacity: 0.7 }
            BodyText { x: root.side - 8 - width; y: tick.down - height / 2; text: tick.modelData.text; level: "small"; quiet: true; wrapMode: Text.NoWrap; Accessible.ignored: true }
        }
    }
    Repeater {
        model: root.trend.dates
        Item {
            id: date
            required property var modelData
            readonly property real along: Math.round(root.atDay(modelData.day))
            Rectangle { x: date.along; y: root.brow + root.up; width: Tone.hair; height: 6; color: Tone.quiet }
            BodyText { x: Math.max(0, Math.min(root.width - width, date.along - width / 2)); y: root.brow + root.up + 5; text: date.modelData.text; level: "small"; quiet: true; wrapMode: Text.NoWrap; Accessible.ignored: true }
        }
    }
    Rectangle { x: root.side; y: root.brow; width: Tone.stroke; height: root.up; color: Tone.quiet }
    Rectangle { x: root.side; y: root.brow + root.up; width: root.across; height: Tone.stroke; color: Tone.quiet }
    // today
    Rectangle { x: Math.round(root.atDay(0)); y: root.brow; width: Tone.stroke; height: root.up; color: Tone.ink }

    Shape {
        anchors.fill: parent
        ShapePath {
            strokeWidth: Tone.hair + 0.5
            strokeColor: Tone.quiet
            fillColor: "transparent"
            PathPolyline { path: root.path(root.trend.before) }
        }
        ShapePath {
            strokeWidth: Tone.stroke
            strokeColor: Tone.ink
            fillColor: "transparent"
            joinStyle: ShapePath.RoundJoin
            PathPolyline { path: root.path(root.trend.points.filter(one => !one.leftOut)) }
        }
        ShapePath {
            strokeWidth: Tone.hair + 0.5
            strokeColor: Tone.ink
            fillColor: "transparent"
            strokeStyle: ShapePath.DashLine
            dashPattern: [2, 4]
            PathPolyline { path: root.path(root.trend.line) }
        }
    }
    Repeater {
        model: root.trend.limits
        Item {
            id: limit
            required property var modelData
            readonly property real down: Math.round(root.atValue(modelData.value))
            Row {
                x: root.side
                y: limit.down - 2
                spacing: 5
                Repeater {
                    model: Math.max(0, Math.floor(root.across / 15))
                    Rectangle { width: 10; height: Tone.stroke + 1; color: Tone.ink }
                }
            }
            Rectangle { anchors.fill: words; anchors.leftMargin: -4; anchors.rightMargin: -4; color: Tone.paper }
            BodyText {
                id: words
                x: root.side + 8
                y: limit.down > root.brow + height + 6 ? limit.down - height - 4 : limit.down + 5
                width: Math.min(implicitWidth, root.width - x)
                text: limit.modelData.text
                level: "small"
                font.bold: true
                Accessible.ignored: true
            }
        }
    }
    // where it is projected to meet the limit: thin from early to late, a ring at likely
    Item {
        visible: root.crossing && !isNaN(root.limit)
        readonly property real down: Math.round(root.atValue(root.limit))
        Rectangle { x: root.atDay(root.trend.early ?? 0); y: parent.down - 8; width: Tone.stroke; height: 16; color: Tone.ink }
        Rectangle { x: root.atDay(root.trend.late ?? 0); y: parent.down - 8; width: Tone.stroke; height: 16; color: Tone.ink }
        Rectangle { x: root.atDay(root.trend.likely ?? 0) - width / 2; y: parent.down - height / 2; width: Tone.px(14); height: width; radius: width / 2; color: Tone.paper; border.width: Tone.stroke; border.color: Tone.ink }
    }
    Repeater {
        model: [...root.trend.before.map(one => ({ at: one, old: true })), ...root.trend.points.map(one => ({ at: one, old: false }))]
        Rectangle {
            required property var modelData
            readonly property bool square: modelData.at.leftOut === true
            x: root.atDay(modelData.at.day) - width / 2
            y: root.atValue(modelData.at.value) - height / 2
            width: Tone.px(9)
            height: width
            radius: square ? 0 : width / 2
            color: modelData.old || square ? Tone.paper : Tone.ink
            border.width: Tone.stroke
            border.color: modelData.old ? Tone.quiet : Tone.ink
        }
    }
}
