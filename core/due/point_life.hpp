// SPDX-License-Identifier: Apache-2.0
// The lives that one point has had, and the chance that it fails before a moment to come.
#pragma once

#include <optional>
#include <vector>

#include "due/history_index.hpp"
#include "due/life_prior.hpp"

namespace snugwalk {

/// From new, or from a mend that did not make it new, to the next mend.
struct Life {
    double born = 0.0;             ///< age at which it was known to work, months
    std::vector<LookAtAge> passes; ///< that still matter
    std::optional<LookAtAge> found;
};

struct PointLives {
    std::vector<Life> earlier; ///< with a look
    Life now;
    double age = 0.0; ///< months, at the moment asked for
    int passes = 0;   ///< of this life, before old ones were left out
    bool workSinceLook = false;
};

/// Replace, clean and lubricate make it new (age 0); re-seal and re-torque halve its age; other work
/// leaves the age. A point whose beginning nobody knows is taken to have been one nominal interval
/// old at its first look (common practice). An attention ends a life when work follows; one that was
/// gone at the next look is left out. With `leaveOutLastWork`, work since the last look is not counted.
[[nodiscard]] PointLives livesOf(const PointHistory &history, double nominal, LocalTime now,
                                 bool leaveOutLastWork);

/// A mean and the 10 and 90 % of the weight on either side.
struct ChanceRange {
    double value = 0.0;
    double low = 0.0;
    double high = 0.0;
};

/// The prior with the weight that the looks leave to each life.
[[nodiscard]] LifeGrid updated(LifeGrid prior, const PointLives &lives);
/// Chance of a defect that is there now, or comes within `ahead` months.
[[nodiscard]] ChanceRange chanceAhead(const LifeGrid &grid, const PointLives &lives, double ahead);
/// Chance that the looks so far missed a defect.
[[nodiscard]] double chanceMissed(const LifeGrid &grid, const PointLives &lives);
/// Chance of a defect by `age` when nobody ever looked.
[[nodiscard]] ChanceRange chanceUnlooked(const LifeGrid &prior, double age);

} // namespace snugwalk
