// SPDX-License-Identifier: Apache-2.0
// Whether water lines held their pressure, with what the temperature did taken off.
#pragma once

#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

struct PressureHold {
    Pressure start;
    Pressure end;
    Temperature startAt;
    Temperature endAt;
    Duration held;
    AbsolutePressure air = AbsolutePressure::fromSi(101325.0);
    Pressure gaugeFull = Pressure::fromSi(100.0 * 6894.757293168361); ///< full scale of the gauge
};

enum class HoldCall { Held, Fell, Undecided };
[[nodiscard]] std::string_view slug(HoldCall call);

struct Held {
    Estimate loss;     ///< Pa that no temperature explains; below 0 a gain
    Estimate expected; ///< Pa the gauge would show without a leak
    HoldCall call = HoldCall::Undecided;
};

/// Trapped air between pump and taps: expected = (P1 + A) T2/T1 - A, loss = expected - P2.
///
/// \returns warnings `pressure_fell`, `pressure_undecided`, `held_too_short` (under 15 minutes),
///          `pressure_high` (over 60 psi, more than water lines of a rig are used to), `gauge_coarse`
///          (under 10 % of its full scale); `OutOfRange` naming "start", "end", "start-at", "end-at" or
///          "held".
/// Range:    the two readings by half a percent of the gauge's full scale each, and 1 K of each temperature
///           (common practice), in quadrature. `Fell` above it, `Held` when the loss is within it
/// Source:   gas law at constant volume; 15 minutes at 50 psi [CA-25-1362], which is for units of another
///           kind and for air, and work of a trained person
/// Limits:   lines full of water fall faster than this for a leak of the same size, so `Fell` stands
/// Tests:    tests/published/bench/water/tst_pressure_hold.cpp
[[nodiscard]] Result<Held> pressureHeld(const PressureHold &hold);

} // namespace snugwalk
