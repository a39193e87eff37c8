// SPDX-License-Identifier: Apache-2.0
// The whole rig in three figures that cannot hide one bad item: a chance, a loss, a share looked at.
#pragma once

#include <span>

#include "concern/point_concern.hpp"

namespace snugwalk {

struct Outlook {
    ChanceRange serious;  ///< at least one item of severity I or II fails before its next look
    int seriousItems = 0; ///< how many such items the rig has
    ChanceRange expected; ///< how many of them: the sum of p
    ChanceRange loss;     ///< sum of R, on the scale of C
    double weight = 0.0;  ///< sum of C times the chance of each point if nobody had looked
    double looked = 0.0;  ///< share of that weight whose last look still counts; 0 to 1
};

/// 1 - product of (1 - p), of chances that do not hang together; without cancellation near 0.
[[nodiscard]] double atLeastOne(std::span<const double> chances);

/// Low and high take every point's low or high at once, for one person's intervals err together.
[[nodiscard]] Outlook outlookOf(const std::vector<PointConcern> &points);

} // namespace snugwalk
