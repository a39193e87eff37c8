// SPDX-License-Identifier: Apache-2.0
// A hairline between two matters.
import QtQuick
import Snugwalk.Style

Rectangle {
    implicitWidth: 48
    implicitHeight: Tone.hair
    color: Tone.line
}
