// SPDX-License-Identifier: Apache-2.0
// One pass over marks, mends and findings, then each point's lists put in order.
#include "due/history_index.hpp"

#include <algorithm>
#include <map>

#include "due/ordered.hpp"

namespace snugwalk {
namespace {

template <typename List, typename Before>
void order(List &list, Before before)
{
    if (!std::is_sorted(list.begin(), list.end(), before))
        std::sort(list.begin(), list.end(), before);
}

bool mendBefore(const Mend *a, const Mend *b) { return isBefore(*a, *b); }

} // namespace

const Mark *PointHistory::lastLook() const
{
    const auto found =
        std::find_if(marks.rbegin(), marks.rend(), [](const MarkOnWalk &m) { return isLook(m.mark->state); });
    return found == marks.rend() ? nullptr : found->mark;
}

HistoryIndex::HistoryIndex(const RigHistory &history, LocalTime now)
{
    for (const WalkRecord &record : history.walks) {
        for (const Mark &mark : record.marks) {
            if (mark.state != MarkState::NotLooked && mark.at.instant <= now.instant)
                m_points[mark.point].marks.push_back({&mark, &record.walk});
        }
    }
    for (const FindingHistory &f : history.findings)
        m_points[f.finding.point].findings.push_back(&f);
    addMends(history, now.instant);
    for (auto &[slug, point] : m_points) {
        order(point.marks,
              [](const MarkOnWalk &a, const MarkOnWalk &b) { return isBefore(*a.mark, *b.mark); });
        order(point.work, mendBefore);
        order(point.findings,
              [](const FindingHistory *a, const FindingHistory *b) { return a->finding.id < b->finding.id; });
    }
}

// A mend reaches its points by name, and those of its findings; each point once.
void HistoryIndex::addMends(const RigHistory &history, Instant now)
{
    std::map<Id, std::string_view> pointOf;
    for (const FindingHistory &f : history.findings)
        pointOf[f.finding.id] = f.finding.point;
    for (const Mend &mend : history.mends) {
        if (mend.at.instant > now)
            continue;
        std::vector<std::string_view> points(mend.points.begin(), mend.points.end());
        for (const Id &id : mend.findings) {
            if (const auto found = pointOf.find(id); found != pointOf.end())
                points.push_back(found->second);
        }
        std::sort(points.begin(), points.end());
        points.erase(std::unique(points.begin(), points.end()), points.end());
        for (const std::string_view point : points)
            m_points[point].work.push_back(&mend);
    }
}

const PointHistory &HistoryIndex::of(std::string_view point) const
{
    static const PointHistory none;
    const auto found = m_points.find(point);
    return found == m_points.end() ? none : found->second;
}

} // namespace snugwalk
