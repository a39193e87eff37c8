// SPDX-License-Identifier: Apache-2.0
// Figures by thumb: large keys, the mark of the language, a unit of either system, and beside them what was
// read last and the limit. It writes into a field that keeps the keyboard's focus, so that both can be used.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style

Item {
    id: root

    property string title: ""
    property string text: ""
    property string decimalMark: "."
    /// Whether a minus sign makes sense here, and a fraction such as 3/32.
    property bool negative: false
    property bool fractions: false
    /// Symbols; the first is what a bare number is taken in. None: a plain count.
    property var units: []
    property string last: ""
    property string limits: ""
    /// How the figure was understood, or what is wrong with it.
    property string answer: ""
    property bool wrong: false
    /// Whether another figure of the same line follows.
    property bool more: false
    /// Too little room: what the field's own page says too is left out here.
    property bool brief: false
    signal edited(string text)
    signal nextAsked()
    signal done()

    readonly property string number: root.text.match(/^[\s\d.,\/+\u2212-]*/)[0].replace(/\s+$/, "")
    readonly property string written: root.text.slice(root.number.length).trim()
    readonly property string unit: root.written !== "" ? root.written : root.picked
    /// A unit that was chosen before the first figure.
    property string picked: ""
    onTitleChanged: root.picked = ""
    readonly property int keySide: Math.max(Tone.target, Tone.textScale > 1.4 ? 0 : Tone.px(52))
    readonly property var keys: [
        ["7", "8", "9", "erase"], ["4", "5", "6", root.negative ? "minus" : root.fractions ? "slash" : "clear"],
        ["1", "2", "3", root.negative && root.fractions ? "slash" : root.negative || root.fractions ? "clear" : ""], ["mark", "0", "next", "done"]]

    /// A figure with the unit that stands behind it.
    function write(number: string, unit: string) {
        root.edited(unit === "" || number === "" ? number : number + " " + unit);
    }
    function press(key: string) {
        const n = root.number, space = root.fractions && /\d$/.test(n) && n.indexOf("/") < 0;
        switch (key) {
        case "erase": return root.write(n.slice(0, -1).replace(/\s+$/, ""), root.unit);
        case "clear": return root.write("", "");
        case "mark": return n.indexOf(root.decimalMark) < 0 && n.indexOf("/") < 0 ? root.write((n === "" || n === "-" ? n + "0" : n) + root.decimalMark, root.unit) : undefined;
        case "minus": return root.write(n.startsWith("-") ? n.slice(1) : "-" + n, root.unit);
        case "slash": return space ? root.write(n + "/", root.unit) : undefined;
        case "next": return root.nextAsked();
        case "done": return root.done();
        default: root.write(n + key, root.unit);
        }
    }
    function shown(key: string): string {
        return key === "erase" ? qsTr("erase", "key of the keypad") : key === "mark" ? root.decimalMark : key === "minus" ? "±" : key === "slash" ? "/"
            : key === "clear" ? qsTr("clear", "key of the keypad") : key === "next" ? qsTr("next", "key of the keypad") : key === "done" ? qsTr("done", "key of the keypad") : key;
    }
    function spoken(key: string): string {
        return key === "erase" ? qsTr("take away the last figure") : key === "mark" ? (root.decimalMark === "," ? qsTr("decimal comma") : qsTr("decimal point"))
            : key === "minus" ? qsTr("above or below zero") : key === "slash" ? qsTr("fraction bar") : key === "clear" ? qsTr("take away all figures")
            : key === "next" ? qsTr("next reading") : key === "done" ? qsTr("done with the readings") : key;
    }

    implicitHeight: column.implicitHeight + 16
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("keypad for %1", "what is read").arg(root.title)

    Rectangle { anchors.fill: parent; color: Tone.paper }
    Rule { width: parent.width; color: Tone.ink }
    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: 8; leftMargin: 12; rightMargin: 12 }
        spacing: 6

        Pair {
            visible: text !== ""
            text: root.brief ? root.limits : root.title
            against: root.brief ? "" : root.limits
            first.font.bold: !root.brief
            first.level: "small"
            second.quiet: true
            Layout.fillWidth: true
            Accessible.role: Accessible.StaticText
            Accessible.name: Format.join([root.title, root.limits, root.last], ", ")
        }
        Pair {
            visible: text !== "" || against !== ""
            text: root.brief && root.answer === "" ? root.last : root.answer
            against: root.brief ? "" : root.last
            first.level: "small"
            first.font.bold: root.wrong
            second.quiet: true
            Layout.fillWidth: true
        }
        Flow {
            visible: root.units.length > 0
            spacing: Tone.gap
            Layout.fillWidth: true
            Repeater {
                model: root.units
                Chip {
                    required property string modelData
                    required property int index
                    text: modelData
                    spoken: qsTr("in %1", "unit").arg(modelData)
                    focusPolicy: Qt.TabFocus
                    checked: root.unit === modelData || root.unit === "" && index === 0
                    onClicked: { root.picked = modelData; root.write(root.number, modelData) }
                    onToggled: checked = Qt.binding(() => root.unit === modelData || root.unit === "" && index === 0)
                }
            }
        }
        Repeater {
            model: root.keys.length // the keys stay and change their words: made anew while a page lays itself out they bring it down
            RowLayout {
                id: line
                required property int index
                spacing: 6
                Layout.fillWidth: true
                Repeater {
                    model: root.keys[0].length
                    Press {
                        id: key
                        required property int index
                        readonly property string which: root.keys[line.index][key.index]
                        readonly property bool figure: which.length === 1 || which === "mark"
                        readonly property bool strong: which === "done"
                        visible: true
                        opacity: which === "" || which === "next" && !root.more ? 0 : 1
                        enabled: opacity > 0
                        text: root.shown(which)
                        spoken: root.spoken(which)
                        objectName: "key " + which
                        focusPolicy: Qt.TabFocus // a press leaves the focus with the field
                        implicitHeight: root.keySide
                        padding: 2
                        Layout.fillWidth: true
                        Layout.preferredWidth: 10
                        Accessible.ignored: !enabled
                        onClicked: root.press(key.which)
                        contentItem: BodyText {
                            text: key.text
                            color: key.strong ? Tone.paper : Tone.ink
                            font.family: key.figure ? Tone.digits : Tone.words
                            font.pixelSize: Math.max(8, Math.min(key.figure ? Tone.px(24) : Tone.px(18), root.keySide * 0.62, (key.width - 6) / (key.figure ? 1 : Math.max(4, key.text.length) * 0.58)))
                            font.bold: key.figure || key.strong
                            wrapMode: Text.NoWrap
                            horizontalAlignment: Text.AlignHCenter
                            verticalAlignment: Text.AlignVCenter
                            Accessible.ignored: true
                        }
                        background: Rectangle {
                            color: key.down ? Tone.line : key.strong ? Tone.ink : Tone.band
                            radius: Tone.corner
                            border.width: Tone.hair
                            border.color: Tone.quiet
                        }
                    }
                }
            }
        }
    }
}
