// SPDX-License-Identifier: Apache-2.0
// How much a reading was to change between two looks.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "catalogue/catalogue.hpp"
#include "due/driven_log.hpp"

namespace snugwalk {

struct Expectation {
    double change = 0.0;      ///< SI, with its sign
    double uncertainty = 0.0; ///< standard uncertainty of that
    std::string from;         ///< slope_days, slope_distance, interval_days, interval_distance
};

struct ReadAt {
    Instant at{};
    double si = 0.0;
};

/// One reading between two looks, and what came before.
struct WearQuestion {
    ReadAt then;
    Instant now{};
    std::span<const ReadAt> earlier; ///< of the same thing since it was last replaced, before `then`
    double limitSi = 0.0;            ///< towards which it wears
    double uncertainty = 0.0;        ///< of one reading
};

/// From its own earlier readings when there are three or more: their slope times what has passed since
/// `then`, never against the way it wears. What passes is distance where the point wears by distance and
/// trips are logged, else days. The slope is never taken as surer than the readings it is made of.
/// Else from the point's interval: an interval is chosen so that a fault takes two of them at least to
/// ripen, so no more than half of the room left to the limit is expected to go in each (a bound, without
/// an uncertainty). Nothing without either.
/// Source: half the time from warning to failure, SAE JA1011, from memory.
[[nodiscard]] std::optional<Expectation> expectedChange(const Point &point, const DrivenLog &driven,
                                                        const WearQuestion &question);

} // namespace snugwalk
