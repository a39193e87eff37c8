// SPDX-License-Identifier: Apache-2.0
// The rig to draw while its form is being filled in.
#pragma once

#include <QVariantMap>

#include "rig/rig.hpp"
#include "voice.hpp"

namespace snugwalk {

/// A rig as `drawnRig` has it, from a form: what can be read and could be, the usual of the kind elsewhere.
/// With `usual`, the texts of what stands where nothing is typed, by the form's keys. \param openingsOf the
/// rig that is put right; null for a new one
[[nodiscard]] QVariantMap draftOfForm(const QVariantMap &map, const Rig *openingsOf, const Voice &voice);

} // namespace snugwalk
