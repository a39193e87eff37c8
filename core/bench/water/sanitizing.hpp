// SPDX-License-Identifier: Apache-2.0
// How much bleach sanitizes a water system.
#pragma once

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// 50 parts in a million of chlorine for 4 hours. Common practice.
inline constexpr double usualPpm = 50.0;
inline constexpr Duration usualContact = Duration::fromSi(4.0 * 3600.0);

/// V = ppm · water / (10⁶ · fraction).
///
/// \param fraction of chlorine in the bleach, 0.01 to 0.15; household bleach 0.0525 to 0.0825
/// \returns m³ of bleach, ±15 % for its age, warning `bleach_unusual` outside 0.05 to 0.085 and
///          `dose_high` above 100 ppm; `OutOfRange` naming "water" (above 0, to 1,000 L), "ppm" (1 to 200) or
///          "bleach".
/// Basis:    common practice
/// Tests:    tests/published/bench/water/tst_sanitizing.cpp
[[nodiscard]] Result<Estimate> bleachVolume(Volume water, double ppm, double fraction);

/// ppm = 10⁶ · fraction · bleach / water, the inverse.
[[nodiscard]] Result<Estimate> chlorineOf(Volume water, Volume bleach, double fraction);

} // namespace snugwalk
