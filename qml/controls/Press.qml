// SPDX-License-Identifier: Apache-2.0
// Anything that can be pressed: big enough, named, reachable by key, its focus seen.
import QtQuick
import QtQuick.Templates as T
import Snugwalk.Style

T.AbstractButton {
    id: root

    /// What a screen reader says; the visible words by default.
    property string spoken: root.text

    /// What a tap does, for keys, screen readers and tests.
    function press() {
        if (root.enabled)
            root.clicked();
    }

    implicitWidth: Math.max(Tone.target, root.implicitContentWidth + root.leftPadding + root.rightPadding)
    implicitHeight: Math.max(Tone.target, root.implicitContentHeight + root.topPadding + root.bottomPadding)
    focusPolicy: Qt.StrongFocus

    Accessible.role: root.checkable ? Accessible.RadioButton : Accessible.Button
    Accessible.name: root.spoken
    Accessible.checkable: root.checkable
    Accessible.checked: root.checked
    Accessible.focusable: true
    Accessible.onPressAction: root.press()

    Keys.onReturnPressed: root.press()
    Keys.onEnterPressed: root.press()

    FocusEdge { around: root; shown: root.visualFocus }
}
