// SPDX-License-Identifier: Apache-2.0
// What is drawn on which photo, so that a photo shows its lines wherever it is shown.
pragma Singleton
import QtQml

QtObject {
    id: root

    /// {hash or file address: [{kind, x1, y1, x2, y2, text}]}, in shares of the upright picture.
    property var on: ({})

    function of(photo: string): var { return root.on[photo] ?? [] }
}
