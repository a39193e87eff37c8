// SPDX-License-Identifier: Apache-2.0
// The rule once more, as it stood before the last pass.
#include "due/rule/pass_guard.hpp"

#include <algorithm>

namespace snugwalk {

std::optional<double> latestAfterPass(DueLines &lines, const Point &point, const PointHistory &history,
                                      const LikeLives &like, const LifeRule &rule, double likely)
{
    const auto interval = rule.intervalDays();
    const Mark *last = history.lastLook();
    if (!interval || likely <= rule.start() + *interval || last == nullptr ||
        last->state != MarkState::Pass || last->at.instant != rule.lives().since.instant)
        return std::nullopt;
    PointHistory before = history;
    std::erase_if(before.marks, [&](const MarkOnWalk &m) { return m.mark == last; });
    const auto old = LifeRule::make(lines, point, before, {}, like);
    const auto day = old ? old->dayBy(0.5) : std::nullopt;
    if (!day)
        return std::nullopt;
    return *day + rule.start() - old->start() + *interval;
}

} // namespace snugwalk
