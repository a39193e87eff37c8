// SPDX-License-Identifier: Apache-2.0
// Finds what a test says it finds.
import QtQml

QtObject {
    property bool able: true
    property var fault: ({})
    property int looks: 0
    signal found(string words)
    function look(camera: var) { looks += 1 }
    function lookAtFile(file: string) { fault = { what: "No code was found in this picture.", act: "Take it straight on and near, without glare; or type the words." } }
    function clear() { fault = {} }
}
