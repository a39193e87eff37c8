// SPDX-License-Identifier: Apache-2.0
// What a rig of a kind usually measures: where a form begins before anyone has held a tape to it.
#pragma once

#include "rig/rig.hpp"

namespace snugwalk {

/// Measures to draw and to begin with when nobody gave any. Common practice, no source: middling figures of
/// what stands on camp sites, not of a make or model, and never a limit of law.
/// \returns metres; without a coupling length for what is not towed by a drawbar, without axles for what
/// stands in a truck's bed.
[[nodiscard]] Measures usualMeasures(RigKind kind, Practice practice);

/// Places of `count` axles for a body of that length, foremost first. Common practice, no source.
/// \param count 0 to 4; more are taken for 4
[[nodiscard]] std::vector<Length> usualAxles(RigKind kind, Length bodyLength, int count);

/// What the roof is usually made of, so that a van is not asked for its membrane. Common practice, no source.
[[nodiscard]] RoofKind usualRoof(RigKind kind, Practice practice);

/// Hubs that are packed by hand, or closed ones. Common practice, no source.
[[nodiscard]] BearingKind usualBearings(RigKind kind, Practice practice);

/// All of the above with the usual coupling and fittings; the name stays empty.
[[nodiscard]] Rig usualRig(RigKind kind, Practice practice);

} // namespace snugwalk
