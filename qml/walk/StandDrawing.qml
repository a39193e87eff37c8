// SPDX-License-Identifier: Apache-2.0
// Where to stand, on the face of the rig that one looks at, with what is known to be there.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Models
import Snugwalk.Rig

RigView {
    id: root

    required property RigModel model
    required property string standSlug
    readonly property var place: root.standOf(root.standSlug, root.model, root.model.kerbLeft)

    rig: root.model
    face: root.place.face
    noseLeft: root.model.kerbLeft
    spots: found.all
    stand: root.place.level === "" ? null : root.place
    standLabel: root.place.level === "inside" ? qsTr("stand inside, here") : root.place.level === "roof" ? qsTr("from the ladder, or a camera on a pole")
        : root.place.level === "under" ? qsTr("look from the edges") : qsTr("stand here")
    measured: false
    numbered: false

    Spots { id: found; model: root.model.findings }
}
