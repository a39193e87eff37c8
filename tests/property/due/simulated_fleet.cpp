// SPDX-License-Identifier: Apache-2.0
// The world as it truly is, and what a look shows of it.
#include "simulated_fleet.hpp"

#include <algorithm>
#include <cmath>

namespace snugwalk::test {
namespace {

constexpr double oneTenth = 1.2815515655; // normal quantile of 0.9
const CivilDate first = std::chrono::year(2000) / 1 / 1;
constexpr auto sun = static_cast<std::size_t>(AgeDriver::Sun);

LocalTime noon(double day)
{
    return {startOfDay(std::chrono::sys_days(std::chrono::days(std::llround(std::floor(day))))) +
                std::chrono::hours(12),
            {}};
}

WeibullLife lifeOf(double length, double shape, double hazard)
{
    return {length / std::pow(hazard, 1.0 / shape), shape};
}

} // namespace

SimulatedPoint::SimulatedPoint(unsigned seed, int looks) : m_rng(seed)
{
    static constexpr std::array months = {6, 12, 24};
    static constexpr std::array consequences = {"T", "W", "C", "K"};
    m_point.slug = "simulated";
    m_point.consequence = {consequences[seed % consequences.size()]};
    m_point.drivers = {"sun"};
    m_point.interval.months = months[seed / 4 % months.size()];
    m_interval = 365.25 * *m_point.interval.months / 12.0;
    m_known = uniform() < 0.5;
    m_length = std::exp(0.6 * normal());
    const ShapeBelief belief = shapeBelief(failingOf(m_point));
    m_shape = m_known ? std::exp(belief.mean + belief.sd * normal()) : 1.0;
    m_gammaOff = gammaDoubt / oneTenth * normal();
    // A place harder or milder than the reference, with its seasons, for ever the same from year to year.
    const double place = std::exp(0.7 * normal());
    Weathering &weather = m_history.weathering;
    std::array<double, 12> season{};
    for (std::size_t m = 0; m < 12; ++m)
        season[m] = place * (1.0 + 0.6 * std::cos(2.0 * 3.14159265358979 * static_cast<double>(m) / 12.0));
    for (std::size_t m = 0; m < 12; ++m)
        weather.usual[m].rate[sun] = {season[m], season[m], season[m]};
    m_now = dayNumber(first);
    const UsageForecast usage = forecastUsage(m_history, noon(m_now));
    m_lines.emplace(m_history, usage, noon(m_now));
    AgeWeights truth;
    truth.gamma[sun] = 0.5 + m_gammaOff;
    m_truth.emplace(m_lines->exposure(), truth, Doubt::Middle);
    if (m_known) {
        replace(m_now);
    } else {
        m_born = m_now;
        m_defect = drawDefect(m_now);
        m_marks.push_back(std::make_unique<Mark>());
        m_marks.back()->state = MarkState::Pass;
        m_marks.back()->at = noon(m_now);
        m_seen.marks.push_back({m_marks.back().get(), nullptr});
    }
    for (int i = 0; i < looks; ++i) {
        m_now = std::floor(m_now + m_interval * (0.6 + 0.6 * uniform()));
        look(m_now);
    }
}

double SimulatedPoint::normal() { return std::normal_distribution<double>()(m_rng); }
double SimulatedPoint::uniform() { return std::uniform_real_distribution<double>()(m_rng); }

double SimulatedPoint::trueAge(double from, double to) const
{
    return (m_truth->at(to) - m_truth->at(from)) / m_interval;
}

// The day on which the chance of having failed reaches a random level.
double SimulatedPoint::drawDefect(double from)
{
    const double hazard = -std::log1p(-failedAtInterval(severityOf(m_point)));
    const WeibullLife life = lifeOf(m_length, m_shape, hazard);
    const double age = life.scale * std::pow(-std::log(1.0 - uniform()), 1.0 / m_shape);
    double low = from;
    double high = from + 400.0 * 365.0;
    while (high - low > 1e-3) {
        const double day = (low + high) / 2.0;
        (trueAge(from, day) < age ? low : high) = day;
    }
    return high;
}

bool SimulatedPoint::look(double day)
{
    static constexpr std::array hows = {LookedHow::Glance, LookedHow::Looked, LookedHow::Measured};
    const LookedHow how = hows[static_cast<std::size_t>(uniform() * 3.0) % 3];
    const bool there = m_defect <= day;
    const bool seen = there ? uniform() < sensitivityOf(how) : uniform() < falseAlarm;
    m_marks.push_back(std::make_unique<Mark>());
    Mark &mark = *m_marks.back();
    mark.state = seen ? MarkState::Attention : MarkState::Pass;
    mark.how = how;
    mark.at = noon(day);
    m_seen.marks.push_back({&mark, nullptr});
    if (seen)
        replace(day);
    return seen && there;
}

void SimulatedPoint::replace(double day)
{
    if (!m_known) { // from now on its age is known, and it has a shape
        const ShapeBelief belief = shapeBelief(failingOf(m_point));
        m_shape = std::exp(belief.mean + belief.sd * normal());
        m_known = true;
    }
    m_born = day;
    m_defect = drawDefect(day);
    m_mends.push_back(std::make_unique<Mend>());
    m_mends.back()->action = "replace";
    m_mends.back()->at = noon(day);
    m_seen.work.push_back(m_mends.back().get());
}

LifeRule SimulatedPoint::ruleNow() { return LifeRule::make(*m_lines, m_point, m_seen).value(); }

std::optional<double> SimulatedPoint::dayBy(double p) { return ruleNow().dayBy(p); }

// As the rule is written, with the life and the clock that only the simulator knows.
std::optional<double> SimulatedPoint::trueDay()
{
    const double hazard = -std::log1p(-failedAtInterval(severityOf(m_point)));
    const WeibullLife life = lifeOf(m_length, m_shape, hazard);
    std::vector<LookAtAge> passes;
    double last = m_born;
    for (const MarkOnWalk &m : m_seen.marks) {
        const double day = dayNumber(civilDate(m.mark->at));
        if (day <= m_born || m.mark->state != MarkState::Pass)
            continue;
        passes.push_back({trueAge(m_born, day), sensitivityOf(m.mark->how)});
        last = day;
    }
    const double likelihood = likelihoodOfPasses(life, {passes, 0.0});
    double age = life.scale * std::pow(hazard - std::log(likelihood), 1.0 / life.shape);
    if (ruleNow().lives().fullPasses < 3) // what was seen may only shorten
        age = std::min(age, trueAge(m_born, last) + m_length);
    double low = last;
    double high = last + 21'915.0;
    if (trueAge(m_born, high) < age)
        return std::nullopt;
    while (high - low > 1e-6) {
        const double day = (low + high) / 2.0;
        (trueAge(m_born, day) < age ? low : high) = day;
    }
    return high;
}

SimulatedPoint::Course SimulatedPoint::fixedCourse(double factor, double end)
{
    Course course;
    for (double day = m_now + factor * m_interval; day < end; day += factor * m_interval) {
        const double defect = m_defect;
        ++course.looks;
        if (look(std::floor(day)))
            course.harm += std::floor(day) - defect;
    }
    course.harm = consequenceOf(m_point) * (course.harm + std::max(end - m_defect, 0.0));
    return course;
}

SimulatedPoint::Course SimulatedPoint::bandCourse(double p, double end)
{
    Course course;
    while (true) {
        const double next = std::max(std::floor(dayBy(p).value_or(end)), m_now + 7.0);
        if (next >= end)
            break;
        m_now = next;
        const double defect = m_defect;
        ++course.looks;
        if (look(m_now))
            course.harm += m_now - defect;
    }
    course.harm = consequenceOf(m_point) * (course.harm + std::max(end - m_defect, 0.0));
    return course;
}

} // namespace snugwalk::test
