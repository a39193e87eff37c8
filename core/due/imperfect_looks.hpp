// SPDX-License-Identifier: Apache-2.0
// What a pass is worth when a look can miss: a Weibull life seen through imperfect looks.
#pragma once

#include <span>

#include "walk/walk.hpp"

namespace snugwalk {

/// S(t) = exp(-(t / scale)^shape); any one unit of time, both above 0.
struct WeibullLife {
    double scale = 1.0;
    double shape = 1.0;
    [[nodiscard]] double hazard(double age) const; ///< cumulative, (t / scale)^shape
    [[nodiscard]] double survival(double age) const;
};

/// A look at an age, and the chance that it sees a defect that is there.
struct LookAtAge {
    double age = 0.0;
    double sensitivity = 1.0; ///< 0 < q <= 1
};

/// Chance that a look sees a defect: measured 0.98, looked 0.85, glance 0.7. Common practice; misses
/// of 20 to 30 % are usual in visual inspection (reviews by See and by Drury, from memory).
[[nodiscard]] double sensitivityOf(LookedHow how);
/// Chance that a look tells of a defect that is not there: 0.02, common practice.
inline constexpr double falseAlarm = 0.02;

/// Passes at rising ages. A part that was mended without becoming new is known to work at the age
/// `born`; all chances are given that.
struct LooksOfLife {
    std::span<const LookAtAge> passes;
    double born = 0.0;
};

/// Chance of a failure between two hazards, without the difference of two near survivals.
[[nodiscard]] double failsBetween(double hazardBefore, double hazardAfter);

/// Failed before the last look and missed by every look since; `hazard` is that of the last look.
struct MissedLooks {
    double mass = 0.0;
    double hazard = 0.0;
};
/// \param hazardAt of a look by its index, counted from the age the life was born at, so that an old
///                 part does not underflow; newest first, and only as far as looks still matter
template <typename HazardAt>
[[nodiscard]] MissedLooks missedBy(std::span<const LookAtAge> passes, HazardAt hazardAt)
{
    MissedLooks out;
    if (passes.empty())
        return out;
    double after = out.hazard = hazardAt(passes.size() - 1);
    double missed = 1.0;
    for (std::size_t j = passes.size(); j > 0; --j) { // newest gap first: the product of misses only falls
        missed *= 1.0 - passes[j - 1].sensitivity;
        if (missed <= 1e-17 * out.mass) // all that is older adds less than this sum's last digit
            break;
        const double before = j > 1 ? hazardAt(j - 2) : 0.0;
        out.mass += failsBetween(before, after) * missed;
        after = before;
    }
    return out;
}

/// One life through its looks, all figures in one pass over them.
struct SeenThrough {
    double likelihood = 1.0; ///< of every look having passed
    double missed = 0.0;     ///< chance of a defect at the last look
    double present = 0.0;    ///< chance of a defect by `age`
};
[[nodiscard]] SeenThrough seenThrough(const WeibullLife &life, LooksOfLife looks, double age);

/// Likelihood that every look passed: S(tk) + the sum over the gaps between looks of what failed
/// there, times the chance that all looks since missed it.
/// Tests: tests/published/due/tst_imperfect_looks.cpp
[[nodiscard]] double likelihoodOfPasses(const WeibullLife &life, LooksOfLife looks);
/// Chance that a defect is there now, at the last look, although every look passed.
[[nodiscard]] double missedSoFar(const WeibullLife &life, LooksOfLife looks);
/// Chance that a defect is there by `age`, at or after the last look: 1 - S(age) / L.
[[nodiscard]] double presentBy(const WeibullLife &life, LooksOfLife looks, double age);
/// Likelihood that `found` told of a defect after the passes, false alarms counted.
[[nodiscard]] double likelihoodOfFinding(const WeibullLife &life, LooksOfLife looks, LookAtAge found,
                                         double alarm = falseAlarm);

/// The looks that still matter: an older gap's failures would have had to be missed by all of them,
/// with a chance under 1e-9. The part left out of a likelihood is below that.
[[nodiscard]] std::span<const LookAtAge> looksThatMatter(std::span<const LookAtAge> passes);

} // namespace snugwalk
