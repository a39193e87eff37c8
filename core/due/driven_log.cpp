// SPDX-License-Identifier: Apache-2.0
// A broken line over time: trips are its slopes.
#include "due/driven_log.hpp"

#include <algorithm>
#include <tuple>

namespace snugwalk {
namespace {

// What begins or ends at a moment: a jump, or a change of the rate.
struct Step {
    Instant when{};
    double jump = 0.0;
    double rate = 0.0;
    int under = 0; ///< trips under way, counted apart: sums of rates never come back to exactly zero
};

std::vector<Step> stepsOf(const RigHistory &history)
{
    std::vector<Step> steps;
    for (const Trip &trip : history.trips) {
        const double metres = trip.summary.length.si();
        if (!(metres > 0.0))
            continue;
        const Instant start = trip.start.instant;
        const Instant end = trip.end.instant;
        if (end <= start) {
            steps.push_back({start, metres, 0.0, 0});
            continue;
        }
        const double rate = metres / static_cast<double>(toMillis(end) - toMillis(start));
        steps.push_back({start, 0.0, rate, 1});
        steps.push_back({end, 0.0, -rate, -1});
    }
    std::sort(steps.begin(), steps.end(), [](const Step &a, const Step &b) {
        return std::tuple(a.when, a.jump, a.rate) < std::tuple(b.when, b.jump, b.rate);
    });
    return steps;
}

double grown(double metres, double rate, Instant from, Instant to)
{
    return metres + rate * static_cast<double>(toMillis(to) - toMillis(from));
}

} // namespace

DrivenLog::DrivenLog(const RigHistory &history)
{
    int under = 0;
    for (const Step &step : stepsOf(history)) {
        Knot next{step.when, step.jump, step.rate};
        if (!m_knots.empty()) {
            const Knot &last = m_knots.back();
            next.metres += grown(last.metres, last.rate, last.when, step.when);
            next.rate += last.rate;
        }
        under += step.under;
        if (under == 0)
            next.rate = 0.0;
        if (!m_knots.empty() && m_knots.back().when == step.when)
            m_knots.back() = next;
        else
            m_knots.push_back(next);
    }
}

Distance DrivenLog::at(Instant when) const
{
    const auto after = std::upper_bound(m_knots.begin(), m_knots.end(), when,
                                        [](Instant moment, const Knot &knot) { return moment < knot.when; });
    if (after == m_knots.begin())
        return Distance();
    const Knot &knot = *std::prev(after);
    return Distance::fromSi(grown(knot.metres, knot.rate, knot.when, when));
}

} // namespace snugwalk
