// SPDX-License-Identifier: Apache-2.0
// How long the steel of a rolling bearing lasts: an upper bound, never a reason to wait.
#pragma once

#include <optional>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

enum class RollingElement { Ball, Roller };

struct BearingLoad {
    RollingElement kind = RollingElement::Roller;
    Force rating;             ///< the bearing maker's dynamic rating C
    Force load;               ///< equivalent dynamic load P
    double reliability = 0.9; ///< 0.90, 0.95, 0.96, 0.97, 0.98 or 0.99
};

/// P = X Fr + Y Fa. Source [ISO-281].
[[nodiscard]] Force equivalentLoad(Force radial, Force axial, double x, double y);

/// Factor a1 on life for a reliability of the table: 1, 0.64, 0.55, 0.47, 0.37, 0.25; nothing for another.
/// Source [ISO-281], 2007 edition, from memory.
[[nodiscard]] std::optional<double> lifeFactor(double reliability);

/// L = a1 (C/P)^p million turns, p = 3 for balls and 10/3 for rollers.
///
/// \returns turns, the range from 0 up to the value, warning `upper_bound`; `OutOfRange` naming "rating",
///          "load" or "reliability"; above P = C/2 the law does not hold and the static rating decides.
/// Source:   [ISO-281]
/// Accuracy: of the steel alone. Trailer hubs end by grease, water, seals and setting, so no date is made of
///           it
/// Tests:    tests/published/bench/hubs/tst_bearing_life.cpp
[[nodiscard]] Result<Estimate> bearingTurns(const BearingLoad &bearing);

/// The same as a distance, for a tire that rolls `circumference` a turn (0.5 to 5 m).
[[nodiscard]] Result<Estimate> bearingDistance(const BearingLoad &bearing, Length circumference);

/// Share of such bearings whose steel lasts `million` turns:
/// R = exp(-((x - 0.02) / 4.439)^1.483), x = million (P/C)^p; 1 up to x = 0.02.
/// Source:   [SHIGLEY] chapter 11, the parameters of its manufacturer 2
/// Tests:    tests/published/bench/hubs/tst_bearing_life.cpp
[[nodiscard]] Result<double> bearingReliability(RollingElement kind, Force rating, Force load,
                                                double million);

/// The rating that carries `load` for `million` turns at a reliability of 0.5 to 0.999; the inverse of
/// `bearingReliability`. Source [SHIGLEY] equation 11-9, with ln 1/R instead of its 1 - R.
[[nodiscard]] Result<Force> bearingRatingFor(RollingElement kind, Force load, double million,
                                             double reliability);

} // namespace snugwalk
