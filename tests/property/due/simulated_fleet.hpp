// SPDX-License-Identifier: Apache-2.0
// Points whose lives are known: drawn from the laws that the due bands assume, looked at imperfectly.
#pragma once

#include <memory>
#include <optional>
#include <random>

#include "due/rule/life_rule.hpp"

namespace snugwalk::test {

/// One point of one rig, its truth, and what a person has written down of it.
class SimulatedPoint {
public:
    /// \param looks  of its past, about an interval apart.
    SimulatedPoint(unsigned seed, int looks);

    /// When the rule fires for the life that the point truly has; nothing within sixty years.
    [[nodiscard]] std::optional<double> trueDay();
    /// The band's day for a probability, from what was written down alone.
    [[nodiscard]] std::optional<double> dayBy(double p);
    [[nodiscard]] double now() const { return m_now; }
    /// The day from which the band counts.
    [[nodiscard]] double lastLook() { return dayNumber(civilDate(ruleNow().lives().since)); }
    [[nodiscard]] bool isKnown() const { return m_known; }

    /// Looks from now on at the days that `next` gives until `end`; the harm is consequence times the days
    /// on which a defect was there unseen.
    struct Course {
        int looks = 0;
        double harm = 0.0;
    };
    [[nodiscard]] Course fixedCourse(double factor, double end);
    [[nodiscard]] Course bandCourse(double p, double end);

private:
    [[nodiscard]] double normal();
    [[nodiscard]] double uniform();
    [[nodiscard]] double trueAge(double from, double to) const;
    [[nodiscard]] double drawDefect(double from);
    bool look(double day);
    void replace(double day);
    [[nodiscard]] LifeRule ruleNow();

    std::mt19937 m_rng;
    Point m_point;
    bool m_known = true;
    double m_length = 1.0;
    double m_shape = 1.0;
    double m_gammaOff = 0.0;
    double m_interval = 365.0;
    double m_now = 0.0;
    double m_defect = 0.0; ///< day on which this life's defect comes
    double m_born = 0.0;
    RigHistory m_history;
    std::optional<AgeLine> m_truth;
    std::optional<DueLines> m_lines;
    PointHistory m_seen;
    std::vector<std::unique_ptr<Mark>> m_marks;
    std::vector<std::unique_ptr<Mend>> m_mends;
};

} // namespace snugwalk::test
