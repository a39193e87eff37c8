// SPDX-License-Identifier: Apache-2.0
// What all concerns of one rig at one moment share, made once.
#pragma once

#include "catalogue/catalogue.hpp"
#include "due/point_life.hpp"
#include "due/usage.hpp"

namespace snugwalk {

/// Holds references: catalogue and history must outlive it.
struct ConcernContext {
    ConcernContext(const Catalogue &catalogue, const RigHistory &history, LocalTime now);

    const Catalogue &catalogue;
    const RigHistory &history;
    LocalTime now;
    HistoryIndex index;
    UsageForecast usage;
    AgeClock clock;
    double tripMonths; ///< 12 at most
};

/// Days a trip takes, the median of the log; 3 without one (common practice).
[[nodiscard]] double tripDays(const RigHistory &history, LocalTime now);

} // namespace snugwalk
