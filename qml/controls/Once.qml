// SPDX-License-Identifier: Apache-2.0
// What is there only when wanted. Stands in for Loader, which in Qt 6.4 refuses bound components.
import QtQuick

Repeater {
    id: root

    required property bool wanted

    model: root.wanted ? 1 : 0
}
