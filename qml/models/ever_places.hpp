// SPDX-License-Identifier: Apache-2.0
// Every place where something was ever found, as the drawing's other layer and its list show it.
#pragma once

#include <QVariantList>

#include "snapshot.hpp"

namespace snugwalk {

/// [{number, findingId, kind, face, x, y, z, times, open, where, what, when}], most often first; findingId is
/// the last one found there, x is not a number without a spot.
[[nodiscard]] QVariantList everPlaceList(const Shown &shown);
/// How many findings say no place, in words; "" when all do.
[[nodiscard]] QString everElsewhereWords(const Shown &shown);

} // namespace snugwalk
