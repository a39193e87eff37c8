// SPDX-License-Identifier: Apache-2.0
// Several tires against what stands on them and against the rating of their axles.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"
#include "bench/tires/tire_load.hpp"

namespace snugwalk {

struct AxleTires {
    TireClass kind = TireClass::LightTruck;
    Mass maxLoad;                ///< of one tire
    int tires = 0;               ///< all that share the load
    Mass load;                   ///< of the axle group
    std::optional<Mass> oneSide; ///< what the heavier side carries, when it was weighed
    std::optional<Mass> rating;  ///< of the axle or axle group
};

struct AxleTiresAnswer {
    Estimate share;    ///< of its rating that the heaviest tire carries
    Estimate perTire;  ///< what that tire carries
    Estimate capacity; ///< of all tires together
};

/// Per tire: the heavier side over half the tires, or without it the group over all tires, at most 10 %
/// more on one side (common practice). Passenger tires count 1 / 1.10 of their rating.
///
/// \returns `OutOfRange` or `InvalidInput` naming the input.
/// Warnings: `over_tires` when a tire carries more than its rating, `tires_under_rating` when all tires
///          together carry less than the axles may ([49CFR571] 571.120 S5.1.2), `sides_unknown`,
///          `passenger_on_trailer`.
/// Tests:   tests/published/bench/tires/tst_axle_tires.cpp
[[nodiscard]] Result<AxleTiresAnswer> tiresUnderAxles(const AxleTires &axle);

} // namespace snugwalk
