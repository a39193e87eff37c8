// SPDX-License-Identifier: Apache-2.0
// The rig to draw while its form is being filled in.
#pragma once

#include <QVariantMap>

#include "rig/rig.hpp"
#include "voice.hpp"

namespace snugwalk {

/// What RigView draws of a rig, in metres: kindSlug, bodyLength, bodyWidth, bodyHeight, floorHeight,
/// hitchLength, axles, openings, kerbLeft.
[[nodiscard]] QVariantMap drawnRig(const Rig &rig);

/// [{name, kind, face, x, y, z, w, h}]
[[nodiscard]] QVariantList openingList(const Rig &rig);

/// The same from a form: what can be read and could be, the usual of the kind elsewhere. With `usual`, the
/// texts of what stands where nothing is typed, by the form's keys.
/// \param openingsOf the rig that is put right; null for a new one
[[nodiscard]] QVariantMap draftOfForm(const QVariantMap &map, const Rig *openingsOf, const Voice &voice);

} // namespace snugwalk
