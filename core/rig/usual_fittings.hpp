// SPDX-License-Identifier: Apache-2.0
// What a rig of a kind usually has where it is at home: the fittings a new rig begins with.
#pragma once

#include <set>
#include <string>

#include "rig/rig.hpp"

namespace snugwalk {

/// Fittings to begin with when nobody said which; those that follow from other fields (coupling, axles,
/// bearings, roof, rooflights) are left to `allFittings`. Common practice, no source; never law.
[[nodiscard]] std::set<std::string> usualFittings(RigKind kind, Practice practice);

/// The coupling such a rig usually has: fifth wheel, none on what drives itself or is carried, else a ball.
[[nodiscard]] HitchType usualHitch(RigKind kind);

} // namespace snugwalk
