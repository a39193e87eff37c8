// SPDX-License-Identifier: Apache-2.0
// Each rule that can make a point due, worked out alone; the band takes whichever fires first.
#pragma once

#include <string>

#include "due/aging/due_lines.hpp"
#include "due/band.hpp"
#include "due/clock.hpp"
#include "due/history_index.hpp"
#include "due/rule/like_points.hpp"
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
    HistoryIndex index;
    DueLines lines;  ///< grows while bands are made
    LikePoints like; ///< the same

    DueContext(const Catalogue &ofCatalogue, const RigHistory &ofHistory, LocalTime at,
               const Ahead &ahead = {})
        : catalogue(ofCatalogue),
          history(ofHistory),
          now(at),
          usage(forecastUsage(ofHistory, at)),
          index(ofHistory, at),
          lines(ofHistory, usage, at, ahead),
          like(ofCatalogue, index, lines)
    {}
    DueContext(const DueContext &) = delete; // its parts know each other
    DueContext &operator=(const DueContext &) = delete;
};

/// By how much data may lengthen the catalogue's interval: not at all for a point of the road or of fire,
/// for a published or a maker's limit, and where the owner set the interval, else by half. Common practice,
/// no source.
[[nodiscard]] double mostLengthening(const RigHistory &history, const Point &point);

/// Every rule that applies to `point`; adds its reasons and the distance left to `band`.
[[nodiscard]] std::vector<Firing> firings(DueContext &context, const Point &point, const PointClock &clock,
                                          DueBand &band);

/// The likely date by months and distance counted from a look alone, as if nothing was mended since.
[[nodiscard]] std::optional<CivilDate> likelyAfterLook(const DueContext &context, const Point &point,
                                                       LocalTime looked);

} // namespace snugwalk
