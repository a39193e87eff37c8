// SPDX-License-Identifier: Apache-2.0
// The age at which a point's rule fires, as a distribution over what its life may be.
#pragma once

#include <vector>

#include "due/life_prior.hpp"
#include "due/rule/interval_life.hpp"

namespace snugwalk {

/// Weighted ages in intervals, sorted. The rule fires when the chance of a defect that is there passes p*.
class RuleAges {
public:
    struct Cell {
        double age = 0.0;
        double weight = 0.0;
    };
    explicit RuleAges(std::vector<Cell> cells);

    /// Share of the weight whose rule has fired by an age, straight between the middles of the cells.
    [[nodiscard]] double firedBy(double age) const;

private:
    std::vector<double> m_ages;
    std::vector<double> m_fired;
};

/// Ages when nothing was ever seen: the life is lognormal about one interval, F(interval) = p* in the
/// middle of every shape, log scale sd 0.6: common practice, declared.
[[nodiscard]] const RuleAges &unseenAges();

/// What like points of a rig tell of how long such a part lasts, in multiples of its interval.
struct LikeLives {
    std::vector<double> logs; ///< log-likelihood, one a cell of life; empty: nothing was seen
    bool aging = false;       ///< some of them were new on a known day
    bool found = false;       ///< some of them failed

    /// All that was seen of one point counts by `weight`.
    void add(const LikeLives &other, double weight);
};
[[nodiscard]] LikeLives likeLives(const IntervalLives &lives, Severity severity, Failing failing);

/// What the looks and mends of a point leave of that, and what those of like points do. With p* and the
/// looks' likelihood L, a life's rule fires where S(age) = (1 - p*) L: the exact chance of a defect that is
/// there, found or missed.
/// The shape of a life of known age is free (see `failingOf`), that of one of unknown age is 1.
/// Formula: interval-censored Weibull life on a fixed grid, see `likelihoodOfPasses`
/// Accuracy: 41 scales over 4 sd by 7 shapes over 3 sd: 0.2 % of an interval against 401 by 61
/// Tests:   tests/unit/due/tst_life_rule.cpp, tests/unit/due/tst_like_points.cpp, tests/property/due
[[nodiscard]] RuleAges seenAges(const IntervalLives &lives, Severity severity, Failing failing,
                                const LikeLives &like = {});

} // namespace snugwalk
