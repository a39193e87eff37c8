// SPDX-License-Identifier: Apache-2.0
// What did not go, and what to do now.
import QtQuick
import QtQuick.Layouts
import Snugwalk.Style
import Snugwalk.Controls

ColumnLayout {
    id: root

    /// {what, act}; empty when nothing went wrong.
    required property var fault

    visible: (root.fault.what ?? "") !== ""
    spacing: 2
    Accessible.role: Accessible.AlertMessage
    Accessible.name: Format.join([root.fault.what, root.fault.act], " ")

    BodyText { text: root.fault.what ?? ""; level: "head"; Layout.fillWidth: true }
    BodyText { visible: text !== ""; text: root.fault.act ?? ""; Layout.fillWidth: true }
}
