// SPDX-License-Identifier: Apache-2.0
// A rig as typed into a form, with every fault told at its field.
#pragma once

#include <QVariantMap>

#include "rig/rig.hpp"
#include "voice.hpp"

namespace snugwalk {

struct RigForm {
    Rig rig;
    QVariantList problems; ///< [{field, what, act}]; `rig` means something only without any
};

/// A new rig. A measure that nobody typed is the usual one of the kind, axles stand where they usually do.
/// \param map texts by name, kind, practice, length, width, height, floor_height, hitch_length, axle_count,
/// roof_walk, roof, placard, tire_size, load_range, max_load, max_pressure, gross, torque; lists axles and
/// fittings.
/// \param units what a bare number is taken for: metres or feet, kPa or psi, kg or lb.
[[nodiscard]] RigForm readRigForm(const QVariantMap &map, UnitSystem units);

/// The same for a rig that is there: texts that stand as `rigFormTexts` gave them keep its exact values.
[[nodiscard]] RigForm readRigForm(const QVariantMap &map, const Rig &old, const Voice &voice);

/// What the form shows of a rig, by the same keys: short figures in the person's units.
[[nodiscard]] QVariantMap rigFormTexts(const Rig &rig, const Voice &voice);

/// One figure as a form shows it, such as "6.4 m": no groups of thousands, no zeros that say nothing.
[[nodiscard]] QString formFigure(const Voice &voice, Dimension dimension, double si);

} // namespace snugwalk
