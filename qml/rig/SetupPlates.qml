// SPDX-License-Identifier: Apache-2.0
// The last step, skippable: what the plate and the tire say, with pictures of where it stands.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    required property var answers
    required property var faultOf
    property string units: "si"
    signal typed(string key, var value)

    readonly property bool us: root.units === "us"
    readonly property string pressure: root.us ? qsTr("such as 65 psi or 4.5 bar") : qsTr("such as 450 kPa, 4.5 bar or 65 psi")
    readonly property string mass: root.us ? qsTr("such as 7,500 lb or 3400 kg") : qsTr("such as 2500 kg or 5,500 lb")
    readonly property var plate: [
        { key: "placard", name: qsTr("1: pressure, cold, by the placard"), note: root.pressure },
        { key: "gross", name: qsTr("2: largest mass of the loaded rig"), note: root.mass }]
    readonly property var tire: [
        { key: "tire_size", name: qsTr("1: size, as it stands"), note: qsTr("such as 205/75 R14 105") },
        { key: "load_range", name: qsTr("1: load range, a letter"), note: qsTr("such as D; many tires have none") },
        { key: "max_load", name: qsTr("2: largest load, single"), note: root.us ? qsTr("such as 2,040 lb") : qsTr("such as 925 kg") },
        { key: "max_pressure", name: qsTr("2: at this pressure, cold"), note: root.pressure }]

    spacing: 14

    BodyText { text: qsTr("Only what stands on the rig counts as its maker's figure. Leave empty what you have not read; it can be added later."); quiet: true; Layout.fillWidth: true }
    BodyText { text: qsTr("The placard"); level: "head"; Layout.fillWidth: true }
    BodyText { text: qsTr("A plate or a sticker on the body: often near the front of the road side, in a door frame or a locker."); Layout.fillWidth: true }
    PlatePicture { us: root.us; Layout.fillWidth: true }
    Fields { rows: root.plate }
    BodyText { text: qsTr("The tire's sidewall"); level: "head"; Layout.fillWidth: true }
    TirePicture { us: root.us; Layout.fillWidth: true }
    BodyText { text: qsTr("3: the date code: the last four figures, week and year. 2326 is week 23 of 2026. The walk asks for it on each wheel."); Layout.fillWidth: true }
    Fields { rows: root.tire }
    BodyText { text: qsTr("The wheel"); level: "head"; Layout.fillWidth: true }
    Field {
        label: qsTr("Torque of the wheel nuts, by the maker")
        text: root.answers.torque ?? ""
        note: root.us ? qsTr("such as 100 lb·ft") : qsTr("such as 120 N·m")
        problem: root.faultOf("torque") // qmllint disable
        Layout.fillWidth: true
        onEdited: text => root.typed("torque", text)
    }

    component Fields: ColumnLayout {
        id: fields
        property var rows: []
        spacing: 14
        Layout.fillWidth: true
        Repeater {
            model: fields.rows
            Field {
                required property var modelData
                label: modelData.name
                text: root.answers[modelData.key] ?? ""
                note: modelData.note
                problem: root.faultOf(modelData.key)
                Layout.fillWidth: true
                onEdited: text => root.typed(modelData.key, text)
            }
        }
    }
}
