// SPDX-License-Identifier: Apache-2.0
// What a torque does to a stud: the force that clamps the wheel, and how far that is from its strength.
#pragma once

#include <optional>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"
#include "bench/wheels/stud.hpp"

namespace snugwalk {

/// Nut factor of dry plain threads, which makers' figures are for.
inline constexpr double dryNutFactor = 0.20;

/// Clamp force F = T / (K d).
///
/// \returns N with 30 % either way, what torque leaves open even with a good wrench. `OutOfRange` naming
///          `torque` outside 40 to 550 lb·ft, which no wheel of a rig gets, or `friction` outside 0.05 to
///          0.35.
/// Warnings: `lubricated_studs` under K = 0.19: the same torque clamps 0.20 / K times as much.
/// Source:   [SHIGLEY] equation 8-27, table 8-15 (zinc 0.20, lubricated 0.18, anti-seize 0.12);
///           30 % as in a bolting glossary and [VDI-2230]
/// Tests:    tests/published/bench/wheels/tst_clamp_force.cpp
[[nodiscard]] Result<Estimate> clampForce(const Stud &stud, Torque torque, double friction);

/// The torque for a clamp force, T = K d F: the inverse.
[[nodiscard]] Torque torqueFor(const Stud &stud, Force force, double friction);

/// The share of its proof load that a stud carries: F / (A proof); above 0.9 with the warning `near_proof`.
[[nodiscard]] Estimate shareOfProof(const Stud &stud, const Estimate &force, Pressure proof);

} // namespace snugwalk
