// SPDX-License-Identifier: Apache-2.0
// A grey field where the camera's picture would be.
import QtQuick

Rectangle {
    property var camera: null
    color: "#9AA0A6"
}
