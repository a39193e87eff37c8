// SPDX-License-Identifier: Apache-2.0
// Choosing the walk to hold the last one against.
#include "round/compare.hpp"

#include <algorithm>
#include <set>

namespace snugwalk {
namespace {

std::set<std::string> lookedAt(const WalkRecord &record)
{
    std::set<std::string> points;
    for (const Mark &mark : record.marks) {
        if (mark.state == MarkState::Pass || mark.state == MarkState::Attention)
            points.insert(mark.point);
    }
    return points;
}

std::size_t inCommon(const std::set<std::string> &a, const std::set<std::string> &b)
{
    return static_cast<std::size_t>(
        std::count_if(a.begin(), a.end(), [&](const std::string &point) { return b.count(point) > 0; }));
}

} // namespace

Result<WalkPair> lastTwo(const RigHistory &history)
{
    // a walk that was only begun has nothing to say yet
    auto now = history.walks.rbegin();
    while (now != history.walks.rend() && lookedAt(*now).empty())
        ++now;
    if (now == history.walks.rend() || std::next(now) == history.walks.rend())
        return Error{Errc::NotFound, "there are no two walks to compare", history.rig.name,
                     "finish a second walk, then ask again"};
    const std::set<std::string> points = lookedAt(*now);
    const WalkRecord *best = &*std::next(now);
    // the latest walk that shares at least half of the points; else the one just before
    for (auto it = std::next(now); it != history.walks.rend(); ++it) {
        if (2 * inCommon(points, lookedAt(*it)) >= points.size()) {
            best = &*it;
            break;
        }
    }
    return WalkPair{best->walk.id, now->walk.id};
}

} // namespace snugwalk
