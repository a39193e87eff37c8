// SPDX-License-Identifier: Apache-2.0
// Quantiles of the time at which a life's rule fires.
#include "due/rule/life_rule.hpp"

#include <algorithm>

#include "due/aging/exposure.hpp"

namespace snugwalk {
namespace {

constexpr double sixtyYears = 21'915.0;
constexpr std::size_t middle = 1;

double daysOf(CivilDate from, int months)
{
    return static_cast<double>(daysBetween(from, addMonths(from, months)));
}

} // namespace

LifeRule::LifeRule(DueLines &lines, const Point &point, const Causes &causes)
{
    const AgeWeights weights = kept(weightsOf(point), causes);
    m_aged = weights != AgeWeights();
    m_age = &lines.age(weights);
    if (point.interval.months && *point.interval.months > 0)
        m_months = *point.interval.months;
    if (point.interval.distance && *point.interval.distance > Distance()) {
        m_metres = point.interval.distance->si();
        m_use = &lines.use(causes);
    }
}

double LifeRule::ageBetween(LocalTime from, LocalTime to) const
{
    const CivilDate a = civilDate(from);
    double age = 0.0;
    if (m_months)
        age = ((*m_age)[middle].at(dayNumber(civilDate(to))) - (*m_age)[middle].at(dayNumber(a))) /
              daysOf(a, *m_months);
    if (m_metres)
        age = std::max(age,
                       ((*m_use)[middle].at(momentOf(to)) - (*m_use)[middle].at(momentOf(from))) / *m_metres);
    return std::max(age, 0.0);
}

std::optional<IntervalLives> LifeRule::livesOf(DueLines &lines, const Point &point,
                                               const PointHistory &history)
{
    const LifeRule rule(lines, point, {});
    if (!rule.m_months && !rule.m_metres)
        return std::nullopt;
    auto lives =
        intervalLivesOf(history, [&](LocalTime from, LocalTime to) { return rule.ageBetween(from, to); });
    return lives.started ? std::optional(std::move(lives)) : std::nullopt;
}

std::optional<LifeRule> LifeRule::make(DueLines &lines, const Point &point, const PointHistory &history,
                                       const Causes &causes, const LikeLives &like)
{
    LifeRule rule(lines, point, causes);
    if (!rule.m_months && !rule.m_metres)
        return std::nullopt;
    rule.m_lives =
        intervalLivesOf(history, [&](LocalTime from, LocalTime to) { return rule.ageBetween(from, to); });
    if (!rule.m_lives.started)
        return std::nullopt;
    rule.m_start = dayNumber(civilDate(rule.m_lives.since));
    rule.m_moment = momentOf(rule.m_lives.since);
    if (rule.m_months)
        rule.m_days = daysOf(civilDate(rule.m_lives.since), *rule.m_months);
    const bool seen = !rule.m_lives.earlier.empty() || !rule.m_lives.now.passes.empty() ||
                      rule.m_lives.now.born > 0.0 || !like.logs.empty();
    if (causes.seen && seen) {
        rule.m_seen = seenAges(rule.m_lives, severityOf(point), failingOf(point), like);
        rule.m_likeFound = like.found;
    } else if (!causes.seen) {
        rule.m_lives.age = 0.0;
    }
    return rule;
}

std::optional<double> LifeRule::intervalDays() const
{
    std::optional<double> days;
    if (m_months)
        days = m_days;
    if (m_metres) {
        if (const auto day = (*m_use)[middle].dayWhen(m_moment, *m_metres))
            days = std::min(days.value_or(*day - m_start), *day - m_start);
    }
    return days;
}

double LifeRule::monthsSince(double day, std::size_t doubt) const
{
    if (!m_months)
        return 0.0;
    const AgeLine &line = (*m_age)[doubt];
    return (line.at(day) - line.at(m_start)) / m_days;
}

double LifeRule::distanceSince(double day, std::size_t use) const
{
    if (!m_metres)
        return 0.0;
    const UseLine &line = (*m_use)[use];
    return (line.at(std::max(day, m_moment)) - line.at(m_moment)) / *m_metres;
}

double LifeRule::firedBy(double day, bool mayLengthen) const
{
    // Where nothing tells the cases apart, the middle one stands for all three.
    const bool clocks = m_aged && m_months;
    const bool uses = m_metres.has_value();
    std::array<double, 3> byMonths{};
    std::array<double, 3> byDistance{};
    for (std::size_t i = 0; i < 3; ++i) {
        byMonths[i] = clocks || i == middle ? monthsSince(day, i) : 0.0;
        byDistance[i] = uses ? distanceSince(day, i) : 0.0;
    }
    double fired = 0.0;
    for (std::size_t g = clocks ? 0 : middle; g <= (clocks ? 2 : middle); ++g) {
        for (std::size_t u = uses ? 0 : middle; u <= (uses ? 2 : middle); ++u) {
            const double gone = std::max(byMonths[g], byDistance[u]);
            double share = m_seen ? m_seen->firedBy(m_lives.age + gone) : 0.0;
            if (!m_seen || !mayLengthen)
                share = std::max(share, unseenAges().firedBy(gone));
            fired += (clocks ? caseWeights[g] : 1.0) * (uses ? caseWeights[u] : 1.0) * share;
        }
    }
    return fired;
}

std::optional<double> LifeRule::dayBy(double p) const
{
    double low = m_start;
    double high = m_start + sixtyYears;
    // That a part passed makes an early failure less likely, whatever else it may not say.
    const bool mayLengthen = p < 0.5 || m_lives.fullPasses >= 3;
    if (firedBy(high, mayLengthen) < p)
        return std::nullopt;
    while (high - low > 1e-7) {
        const double day = (low + high) / 2.0;
        (firedBy(day, mayLengthen) < p ? low : high) = day;
    }
    return high;
}

const char *LifeRule::ruleAt(double day) const
{
    return monthsSince(day, middle) >= distanceSince(day, middle) ? "months" : "distance";
}

} // namespace snugwalk
