// SPDX-License-Identifier: Apache-2.0
// When the chance of a hidden defect has grown to what a point of its severity may have.
#pragma once

#include <optional>

#include "due/aging/due_lines.hpp"
#include "due/rule/rule_age.hpp"

namespace snugwalk {

/// The question of one point, asked of one rig. Points with neither months nor distance have none, nor
/// has one of which nothing is known.
///
/// Each cell of life, case of driving to come and doubt about the clock gives one time at which the rule
/// fires; `dayBy` is the quantile of those times. Months and distance run side by side, each since the
/// last look, and the one that has used up more of its interval counts.
/// Until three passes in a row came a whole interval apart, what was seen may only shorten the likely and
/// the late day against a part of which nothing was seen; what like points passed too.
/// Source: methods of `AgeLine`, `UseLine`, `RuleAges`; thresholds common practice, declared
/// Tests:  tests/unit/due/tst_life_rule.cpp, tests/property/due
class LifeRule {
public:
    /// Holds references: all must outlive it.
    [[nodiscard]] static std::optional<LifeRule> make(DueLines &lines, const Point &point,
                                                      const PointHistory &history, const Causes &causes = {},
                                                      const LikeLives &like = {});
    /// The lives alone, as `make` tells them; nothing where it makes no rule.
    [[nodiscard]] static std::optional<IntervalLives> livesOf(DueLines &lines, const Point &point,
                                                              const PointHistory &history);

    /// Days from 1970 by which the rule has fired with probability `p`; nothing within sixty years.
    [[nodiscard]] std::optional<double> dayBy(double p) const;
    /// `months` or `distance`: what has used up more by a day.
    [[nodiscard]] const char *ruleAt(double day) const;
    /// True when this rig's own looks bear on it, beyond the last.
    [[nodiscard]] bool isFitted() const { return m_lives.found || m_likeFound || m_lives.fullPasses >= 3; }
    [[nodiscard]] const IntervalLives &lives() const { return m_lives; }
    /// Day of the last look or mend, from 1970.
    [[nodiscard]] double start() const { return m_start; }
    /// From then, the days of the catalogue's interval: of its months, or until its distance is likely
    /// driven where that is sooner; nothing when it never is.
    [[nodiscard]] std::optional<double> intervalDays() const;

private:
    LifeRule(DueLines &lines, const Point &point, const Causes &causes);
    [[nodiscard]] double ageBetween(LocalTime from, LocalTime to) const;
    [[nodiscard]] double monthsSince(double day, std::size_t doubt) const;
    [[nodiscard]] double distanceSince(double day, std::size_t use) const;
    [[nodiscard]] double firedBy(double day, bool mayLengthen) const;

    const DueLines::AgeCases *m_age;
    const DueLines::UseCases *m_use = nullptr; ///< only with a distance
    bool m_aged = false;                       ///< by any driver: else all clocks are the calendar
    std::optional<int> m_months;
    std::optional<double> m_metres;
    IntervalLives m_lives;
    bool m_likeFound = false;
    std::optional<RuleAges> m_seen; ///< nothing: as if nothing had been seen
    double m_start = 0.0;           ///< day of the last look or mend
    double m_moment = 0.0;          ///< the same with its time of day
    double m_days = 1.0;            ///< of the interval, from then
};

} // namespace snugwalk
