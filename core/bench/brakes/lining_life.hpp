// SPDX-License-Identifier: Apache-2.0
// How far a brake lining goes on from two readings.
#pragma once

#include <optional>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// 1/16 in (1.6 mm): a hold. Source [CFR49-570] 570.59.
inline constexpr Length liningHold = Length::fromSi(0.0016);
/// 3/32 in: order the part. Common practice.
inline constexpr Length liningPlan = Length::fromSi(3.0 / 32.0 * 0.0254);

struct LiningReadings {
    Length before;
    Length now;
    Distance driven;                  ///< between the two
    std::optional<Length> maker = {}; ///< the maker's least, which counts when it is more than the hold's
};

struct LiningLife {
    Estimate left; ///< m until the least thickness
    Estimate rate; ///< m of lining a m of road
};

/// (now - least) / ((before - now) / driven).
///
/// \returns warnings on `left`: `lining_hold` at or under the least, `lining_plan` under 3/32 in,
///          `wear_within_doubt` when the wear is no more than the doubt of two readings; then the high end is
///          160,000 km. `OutOfRange` naming "before", "now" (0 to 25 mm), "driven" (100 km to 500,000 km) or
///          "maker"; `InvalidInput` naming "now" when the lining grew: it was replaced, start again.
/// Range:    each reading by 0.2 mm (common practice)
/// Tests:    tests/published/bench/brakes/tst_lining_life.cpp
[[nodiscard]] Result<LiningLife> liningLife(const LiningReadings &readings);

} // namespace snugwalk
