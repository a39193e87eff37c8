// SPDX-License-Identifier: Apache-2.0
// A mend that can be taken back.
import QtQml

QtObject {
    property bool busy: false
    property string what: "Mend: Roof vent sealant, written 12 March 2027"
    property int taken: 0

    function look() {}
    function takeBack() { taken += 1 }
}
