// SPDX-License-Identifier: Apache-2.0
// How much antifreeze the water lines take, and what is left of it among the water that stayed.
#pragma once

#include <optional>
#include <span>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// A run of pipe by the bore of its inside.
struct PipeRun {
    Length length;
    Length bore;
};

/// Inside of PEX pipe by nominal size 3/8, 1/2 and 3/4 in: 0.36, 0.485 and 0.681 in. From memory, a
/// maker's sheet wins.
[[nodiscard]] std::optional<Length> pexBore(Length nominal);

struct WaterSystem {
    std::span<const PipeRun> runs;
    int traps = 0;
    bool pump = true;
    bool toilet = true;
    bool washer = false;
    std::optional<Volume> heater = {}; ///< only when it is not bypassed
};

/// V = 1.3 (Σ π/4 d² L + 0.1 gal pump + 0.125 gal a trap + 0.13 gal toilet + 0.5 gal washer) + heater.
///
/// \returns m³, ±20 %, warning `heater_not_bypassed`; `OutOfRange` naming "pipe" (0 to 300 m), "size" (bore
///          4 to 50 mm), "traps" (0 to 40) or "heater" (0 to 100 L); `InvalidInput` naming "pipe" for no
///          runs or over 100.
/// Source:   geometry; fixtures, the 30 % of losses and the range are common practice
/// Tests:    tests/published/bench/water/tst_antifreeze.cpp
[[nodiscard]] Result<Estimate> antifreezeVolume(const WaterSystem &system);

/// c = c0 Va / (Va + Vw): strength after water that stayed in the line.
///
/// \param strength of the liquid put in, 0 to 1; the label's own words for a mix sold ready: 1
/// \returns `OutOfRange` naming "strength", "added" or "water" (0 to 1,000 L).
/// Tests:    tests/published/bench/water/tst_antifreeze.cpp
[[nodiscard]] Result<Estimate> strengthAfterMixing(double strength, Volume added, Volume water);

/// Va = c Vw / (c0 - c), the inverse: how much brings `water` to a strength.
/// \returns `OutOfRange` as above, and naming "wanted" unless it is below `strength`.
[[nodiscard]] Result<Estimate> addedForStrength(double strength, double wanted, Volume water);

/// Share of a line's volume that stays after it was blown out: 5 to 10 %, common practice.
inline constexpr double leastResidue = 0.05;
inline constexpr double mostResidue = 0.10;

} // namespace snugwalk
