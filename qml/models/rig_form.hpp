// SPDX-License-Identifier: Apache-2.0
// A rig as typed into a form, with every fault told at its field.
#pragma once

#include <QVariantMap>

#include "rig/rig.hpp"

#include "base/units.hpp"

namespace snugwalk {

struct RigForm {
    Rig rig;
    QVariantList problems; ///< [{field, what, act}]; `rig` means something only without any
};

/// \param units what a bare number is taken for: metres or feet.
[[nodiscard]] RigForm readRigForm(const QVariantMap &map, UnitSystem units);

} // namespace snugwalk
