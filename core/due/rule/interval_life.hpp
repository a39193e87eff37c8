// SPDX-License-Identifier: Apache-2.0
// The lives of one point told in intervals: 1 is the catalogue's interval at reference exposure.
#pragma once

#include <functional>
#include <vector>

#include "due/history_index.hpp"
#include "due/imperfect_looks.hpp"

namespace snugwalk {

/// How much of its interval a point uses up between two moments.
using IntervalAge = std::function<double(LocalTime from, LocalTime to)>;

/// One life: from new, or from a look or mend of which the age before is not known.
struct IntervalLife {
    double born = 0.0;  ///< age at which it was known to work
    bool known = false; ///< its age counts from new, so that it is seen to age; else it fails by chance
    std::vector<LookAtAge> passes;
    std::optional<LookAtAge> found;
};

struct IntervalLives {
    std::vector<IntervalLife> earlier; ///< with a look that tells something
    IntervalLife now;
    double age = 0.0;     ///< at `since`
    LocalTime since;      ///< when the clock last started or was read: the last look or mend
    int fullPasses = 0;   ///< passes in a row, each a whole interval after the one before
    bool started = false; ///< nothing is known of it otherwise
    bool found = false;   ///< anywhere a finding ended a life
};

/// Replace, clean and lubricate start a life at age 0; re-seal and re-torque one at half the age; adjust
/// and other leave it. A pass at a part of unknown age starts one too: the look stands for its birth. An
/// attention ends a life, and the look at it starts the next. Ages add up from record to record.
/// Formula: Kijima's first model of repair with factor 1/2 [KIJIMA-1989]
[[nodiscard]] IntervalLives intervalLivesOf(const PointHistory &history, const IntervalAge &age);

} // namespace snugwalk
