// SPDX-License-Identifier: Apache-2.0
// Where to stand, on the face of the rig that one looks at, with what is known to be there.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Models
import Snugwalk.Rig
import Snugwalk.Sheet

RigView {
    id: root

    required property RigModel model
    required property string standSlug

    rig: root.model.drawn
    face: where.standFace || (root.model.kerbLeft ? "left" : "right")
    noseLeft: root.model.kerbLeft
    spots: found.all
    stand: root.standSlug
    standLabel: where.standLevel === "inside" ? qsTr("stand inside, here") : where.standLevel === "roof" ? qsTr("from the ladder, or a camera on a pole")
        : where.standLevel === "under" ? qsTr("look from the edges") : qsTr("stand here")
    measured: false
    numbered: false

    Spots { id: found; model: root.model.findings }
    RigSheet { id: where; rig: root.model.drawn; stand: root.standSlug }
}
