// SPDX-License-Identifier: Apache-2.0
// Tire pressure with temperature and altitude: what a gauge will show, and what to set now.
#pragma once

#include <optional>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// Where and how warm a tire is.
struct TirePlace {
    Temperature tire = Temperature::fromSi(293.15); ///< of the tire, -40 degC to +90 degC
    Length altitude;                                ///< geopotential, -500 m to 11,000 m
};

/// What a gauge shows elsewhere when no air went in or out.
///
/// \param shown gauge pressure at `from`, above 0 and up to 1,000 kPa.
/// \returns the gauge pressure at `to`, which may be below zero for a nearly empty tire;
///          `OutOfRange` naming the input otherwise.
///
/// Formula:  P2 = (P1 + A1) T2 / T1 - A2; A is the air pressure at the place, T in kelvin
/// Source:   ideal gas law at constant volume; A from [USSA-1976]
/// Accuracy: the tire's own stretch of 1 to 3 % of volume is left out; start state unknown: 2 psi
/// Tests:    tests/published/bench/tires/tst_tire_pressure.cpp
[[nodiscard]] Result<Pressure> pressureElsewhere(Pressure shown, const TirePlace &from, const TirePlace &to);

/// The same as a result to show, with 2 psi either way when the tire was driven within three hours.
[[nodiscard]] Result<Estimate> pressureEstimate(Pressure shown, const TirePlace &from, const TirePlace &to,
                                                bool fromIsWarm);

struct TireSetting {
    Pressure placard;                ///< the maker's cold figure: the least, at any temperature
    std::optional<Pressure> maximum; ///< the lower of tire and wheel, cold
    TirePlace now;                   ///< where the tire is set
    TirePlace coldest;               ///< the coldest start expected before it is set again
};

/// What to set now: the larger of the placard and the placard corrected from the coldest start
/// expected to the temperature now, never over the maximum. Cold means the tire's temperature
/// before driving, whatever that is.
/// Range: the coldest start known to within 3 K (common practice); never under the placard.
/// Warnings: `set_outside` when the maximum stands in the way, so that the tire is to be set where
/// it is as cold as it will start; `maximum_unknown` when it was not given.
/// \returns `InvalidInput` when the maximum is below the placard.
[[nodiscard]] Result<Estimate> pressureToSet(const TireSetting &setting);

/// What a reading says. A warm reading is never a pass: at most it is not low.
enum class PressureCall { Low, AtLeastPlacard, NotLow, OverMaximum };
[[nodiscard]] std::string_view slug(PressureCall call);

/// \param warm driven, or in the sun, within the last three hours.
/// A warm tire over its maximum is `NotLow`: air is never let out of a hot tire.
[[nodiscard]] PressureCall judge(Pressure shown, bool warm, Pressure placard,
                                 std::optional<Pressure> maximum);

} // namespace snugwalk
