// SPDX-License-Identifier: Apache-2.0
// Each rule that can make a point due, worked out alone; the band takes whichever fires first.
#pragma once

#include <string>

#include "due/band.hpp"
#include "due/clock.hpp"
#include "due/usage.hpp"

namespace snugwalk {

/// The dates of one rule.
struct Firing {
    CivilDate early;
    CivilDate likely;
    CivilDate late;
    std::string rule;
    std::string basis;
};

/// What all points of a rig share while their bands are made.
struct DueContext {
    const Catalogue &catalogue;
    const RigHistory &history;
    LocalTime now;
    UsageForecast usage;
};

/// Every rule that applies to `point`; adds its reasons and the distance left to `band`.
[[nodiscard]] std::vector<Firing> firings(const DueContext &context, const Point &point,
                                          const PointClock &clock, DueBand &band);

/// The likely date by months and distance counted from a look alone, as if nothing was mended since.
[[nodiscard]] std::optional<CivilDate> likelyAfterLook(const DueContext &context, const Point &point,
                                                       LocalTime looked);

} // namespace snugwalk
