// SPDX-License-Identifier: Apache-2.0
// What is drawn of a rig, as a map that pages pass on: equal maps give equal drawings.
#pragma once

#include <QVariantMap>

#include "rig/rig.hpp"

namespace snugwalk {

/// In metres: kindSlug, practice, hitch, bodyLength, bodyWidth, bodyHeight, floorHeight, hitchLength, axles,
/// openings as `openingList` has them, fitted, kerbLeft.
[[nodiscard]] QVariantMap drawnRig(const Rig &rig);

/// [{name, kind, face, x, y, z, w, h}]
[[nodiscard]] QVariantList openingList(const Rig &rig);

/// The rig of such a map, as far as drawing goes; what is missing or unknown stays as in `Rig{}`.
[[nodiscard]] Rig rigOfDrawn(const QVariantMap &map);

} // namespace snugwalk
