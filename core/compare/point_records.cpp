// SPDX-License-Identifier: Apache-2.0
// One pass over walks, findings and mends.
#include "compare/point_records.hpp"

#include <algorithm>

#include "due/ordered.hpp"

namespace snugwalk {
namespace {

bool photosInOrder(const std::vector<Photo> &photos)
{
    return std::is_sorted(photos.begin(), photos.end(), [](const Photo &a, const Photo &b) {
        return a.added.instant != b.added.instant ? a.added.instant < b.added.instant : a.id < b.id;
    });
}

// Mends and passes are asked for by time, in any order.
bool isOrdered(const FindingHistory &f)
{
    return std::is_sorted(f.looks.begin(), f.looks.end(), isBefore<Look>) && photosInOrder(f.photos);
}

bool openedBefore(const FindingHistory *a, const FindingHistory *b)
{
    const Finding &x = a->finding;
    const Finding &y = b->finding;
    return x.opened.instant != y.opened.instant ? x.opened.instant < y.opened.instant : x.id < y.id;
}

} // namespace

const WalkRecord *findWalk(const RigHistory &history, const Id &id)
{
    const auto found = std::find_if(history.walks.begin(), history.walks.end(),
                                    [&](const WalkRecord &r) { return r.walk.id == id; });
    return found == history.walks.end() ? nullptr : &*found;
}

bool isLook(const Mark *mark)
{
    return mark != nullptr && (mark->state == MarkState::Pass || mark->state == MarkState::Attention);
}

const Mark *WalkSide::mark(std::string_view point) const
{
    const auto found = marks.find(point);
    return found == marks.end() ? nullptr : found->second;
}

WalkSide sideOf(const RigHistory &history, const Id &walk)
{
    WalkSide side{walk, {}, {}, {}, {}};
    const WalkRecord *record = findWalk(history, walk);
    if (record == nullptr)
        return side;
    side.start = record->walk.started.instant;
    side.end = std::max(side.start, record->walk.finished ? record->walk.finished->instant : Instant{});
    for (const TapeLine &line : record->walk.tape)
        side.asked.insert(side.asked.end(), line.points.begin(), line.points.end());
    for (const Mark &mark : record->marks) {
        side.end = std::max(side.end, mark.at.instant);
        side.asked.push_back(mark.point);
        const Mark *&known = side.marks[mark.point];
        if (known == nullptr || isBefore(*known, mark))
            known = &mark;
    }
    std::sort(side.asked.begin(), side.asked.end());
    side.asked.erase(std::unique(side.asked.begin(), side.asked.end()), side.asked.end());
    return side;
}

PointIndex::PointIndex(const RigHistory &history, const std::vector<std::string_view> &points)
{
    m_records.reserve(points.size());
    for (const std::string_view point : points)
        m_records[point];
    addLooks(history);
    for (const FindingHistory &finding : history.findings)
        addFinding(finding);
    for (const Mend &mend : history.mends) {
        for (const std::string &point : mend.points) {
            if (PointRecords *records = slot(point))
                records->mends.push_back(mend.at.instant);
        }
    }
    const auto before = [](const Mark *a, const Mark *b) { return isBefore(*a, *b); };
    for (auto &[point, records] : m_records) {
        if (!std::is_sorted(records.looks.begin(), records.looks.end(), before))
            std::sort(records.looks.begin(), records.looks.end(), before);
        std::sort(records.findings.begin(), records.findings.end(), openedBefore);
    }
}

// Walks go the same way round as a rule: the same place in the last walk is asked before the table.
void PointIndex::addLooks(const RigHistory &history)
{
    std::vector<std::pair<std::string_view, PointRecords *>> lastTime;
    for (const WalkRecord &record : history.walks) {
        if (lastTime.size() < record.marks.size())
            lastTime.resize(record.marks.size());
        for (std::size_t i = 0; i < record.marks.size(); ++i) {
            const Mark &mark = record.marks[i];
            if (!isLook(&mark))
                continue;
            if (lastTime[i].first != mark.point)
                lastTime[i] = {mark.point, slot(mark.point)};
            if (lastTime[i].second != nullptr)
                lastTime[i].second->looks.push_back(&mark);
        }
    }
}

PointRecords *PointIndex::slot(std::string_view point)
{
    const auto found = m_records.find(point);
    return found == m_records.end() ? nullptr : &found->second;
}

void PointIndex::addFinding(const FindingHistory &finding)
{
    PointRecords *records = slot(finding.finding.point);
    if (records == nullptr)
        return;
    if (isOrdered(finding)) {
        records->findings.push_back(&finding);
        return;
    }
    m_sorted.push_back(ordered(finding));
    records->findings.push_back(&m_sorted.back());
}

const PointRecords &PointIndex::of(std::string_view point) const
{
    static const PointRecords none;
    const auto found = m_records.find(point);
    return found == m_records.end() ? none : found->second;
}

} // namespace snugwalk
