// SPDX-License-Identifier: Apache-2.0
// Points of two walks side by side.
#include "compare/compare.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

#include "compare/findings.hpp"
#include "compare/readings.hpp"
#include "due/ordered.hpp"

namespace snugwalk {
namespace {

const WalkRecord *findWalk(const RigHistory &history, Id id)
{
    const auto found = std::find_if(history.walks.begin(), history.walks.end(),
                                    [&](const WalkRecord &r) { return r.walk.id == id; });
    return found == history.walks.end() ? nullptr : &*found;
}

bool isLook(const Mark *mark)
{
    return mark != nullptr && (mark->state == MarkState::Pass || mark->state == MarkState::Attention);
}

/// One of the two walks, ready for questions about its points.
struct Side {
    Id id;
    Instant start{};
    Instant end{};
    std::set<std::string> asked; ///< by its tape, or marked all the same
    std::map<std::string, const Mark *> marks;
};

Side sideOf(const RigHistory &history, Id id)
{
    Side side{id, {}, {}, {}, {}};
    const WalkRecord *record = findWalk(history, id);
    if (record == nullptr)
        return side;
    side.start = record->walk.started.instant;
    side.end = std::max(record->walk.started.instant,
                        record->walk.finished ? record->walk.finished->instant : Instant{});
    for (const TapeLine &line : record->walk.tape)
        side.asked.insert(line.points.begin(), line.points.end());
    for (const Mark &mark : record->marks) {
        side.end = std::max(side.end, mark.at.instant);
        side.asked.insert(mark.point);
        const Mark *&known = side.marks[mark.point];
        if (known == nullptr || isBefore(*known, mark))
            known = &mark;
    }
    return side;
}

const Mark *markOf(const Side &side, const std::string &point)
{
    const auto found = side.marks.find(point);
    return found == side.marks.end() ? nullptr : found->second;
}

/// Looks and mends by point, so that a comparison reads the history once.
struct Index {
    std::map<std::string, std::vector<const Mark *>> looks;      ///< passes and attentions, oldest first
    std::map<std::string, std::vector<FindingHistory>> findings; ///< in order of opening
    std::map<std::string, std::vector<Instant>> mends;           ///< that name the point itself
};

Index indexOf(const RigHistory &history, const std::set<std::string> &points)
{
    Index index;
    for (const WalkRecord &record : history.walks) {
        for (const Mark &mark : record.marks) {
            if (isLook(&mark) && points.count(mark.point) > 0)
                index.looks[mark.point].push_back(&mark);
        }
    }
    for (auto &[point, marks] : index.looks)
        std::sort(marks.begin(), marks.end(), [](const Mark *a, const Mark *b) { return isBefore(*a, *b); });
    for (const FindingHistory &f : history.findings) {
        if (points.count(f.finding.point) > 0)
            index.findings[f.finding.point].push_back(ordered(f));
    }
    for (auto &[point, list] : index.findings) {
        std::sort(list.begin(), list.end(), [](const FindingHistory &a, const FindingHistory &b) {
            const Finding &x = a.finding;
            const Finding &y = b.finding;
            return x.opened.instant != y.opened.instant ? x.opened.instant < y.opened.instant : x.id < y.id;
        });
    }
    for (const Mend &mend : history.mends) {
        for (const std::string &point : mend.points)
            index.mends[point].push_back(mend.at.instant);
    }
    return index;
}

// Up to when records of `walk` count at a point: its mark, and looks at the point's findings that it
// wrote beside the mark. A mend on the same afternoon comes after.
Instant momentOf(const Side &side, const Mark *mark, const std::vector<FindingHistory> &findings)
{
    Instant at = mark != nullptr ? mark->at.instant : side.end;
    for (const FindingHistory &f : findings) {
        for (const Look &look : f.looks) {
            if (look.walk == side.id)
                at = std::max(at, look.at.instant);
        }
    }
    return at;
}

// The last look at the point by the end of the earlier walk, apart from the later walk's own.
const Mark *earlierLook(const Index &index, const std::string &point, const Side &then, const Side &now)
{
    const auto found = index.looks.find(point);
    if (found == index.looks.end())
        return nullptr;
    const Mark *last = nullptr;
    for (const Mark *mark : found->second) {
        if (mark->at.instant <= then.end && mark->walk != now.id)
            last = mark;
    }
    return last;
}

bool allMended(const std::vector<FindingChange> &changes)
{
    return !changes.empty() && std::all_of(changes.begin(), changes.end(),
                                           [](const FindingChange &f) { return f.change == Change::Mended; });
}

bool mendedAtPoint(const Index &index, const std::string &point, Instant after, Instant by)
{
    const auto found = index.mends.find(point);
    return found != index.mends.end() && std::any_of(found->second.begin(), found->second.end(),
                                                     [&](Instant at) { return at > after && at <= by; });
}

Change pointChange(const PointChange &p, bool mendedPoint)
{
    if (p.now == MarkState::NotFitted)
        return p.then == MarkState::NotFitted ? Change::Same : Change::NotFitted;
    if (p.now != MarkState::Pass && p.now != MarkState::Attention)
        return Change::NotLooked;
    if (p.then != MarkState::Pass && p.then != MarkState::Attention)
        return Change::FirstLook;
    if (p.now == MarkState::Pass) {
        if (p.then == MarkState::Pass)
            return Change::Same;
        return allMended(p.findings) || (p.findings.empty() && mendedPoint) ? Change::Mended : Change::Gone;
    }
    // attention without a finding that was looked at: new after a pass, else what it was
    return worstOf(p.findings).value_or(p.then == MarkState::Pass ? Change::New : Change::Same);
}

PointChange comparePoint(const Catalogue &catalogue, const RigHistory &history, const Index &index,
                         const std::string &point, const Side &then, const Side &now)
{
    static const std::vector<FindingHistory> none;
    const auto listed = index.findings.find(point);
    const std::vector<FindingHistory> &findings = listed == index.findings.end() ? none : listed->second;
    const Mark *before = markOf(then, point);
    const Mark *after = markOf(now, point);
    PointChange p;
    p.point = point;
    if (!isLook(before) && !(before != nullptr && before->state == MarkState::NotFitted)) {
        const Mark *earlier = earlierLook(index, point, then, now);
        p.carried = earlier != nullptr;
        before = earlier != nullptr ? earlier : before;
    }
    if (before != nullptr) {
        p.then = before->state;
        p.thenAt = before->at;
    }
    p.now = after != nullptr ? after->state : MarkState::NotLooked;
    const Moment from{then.id, momentOf(then, p.carried ? nullptr : before, findings), p.then, then.start,
                      then.end};
    const Moment to{now.id, momentOf(now, after, findings), p.now, now.start, now.end};
    for (const FindingHistory &f : findings) {
        if (auto change = compareFinding(f, from, to))
            p.findings.push_back(std::move(*change));
    }
    p.change = pointChange(p, mendedAtPoint(index, point, from.at, to.at));
    if (isLook(before) && isLook(after))
        p.readings = compareReadings(catalogue, history.rig, *before, *after);
    return p;
}

// Catalogue order; points that the catalogue no longer has come last, by slug.
std::vector<std::string> inOrder(const Catalogue &catalogue, const std::set<std::string> &slugs)
{
    std::vector<std::string> out;
    for (const Point &point : catalogue.points()) {
        if (slugs.count(point.slug) > 0)
            out.push_back(point.slug);
    }
    for (const std::string &slug : slugs) {
        if (catalogue.find(slug) == nullptr)
            out.push_back(slug);
    }
    return out;
}

std::set<std::string> without(const std::set<std::string> &all, const std::set<std::string> &taken)
{
    std::set<std::string> left;
    std::set_difference(all.begin(), all.end(), taken.begin(), taken.end(), std::inserter(left, left.end()));
    return left;
}

bool startedLater(const RigHistory &history, Id a, Id b)
{
    const WalkRecord *x = findWalk(history, a);
    const WalkRecord *y = findWalk(history, b);
    if (x == nullptr || y == nullptr)
        return false;
    const auto key = [](const WalkRecord *r) { return std::pair(r->walk.started.instant, r->walk.id); };
    return key(x) > key(y);
}

} // namespace

Comparison compareWalks(const Catalogue &catalogue, const RigHistory &history, Id thenWalk, Id nowWalk)
{
    if (startedLater(history, thenWalk, nowWalk))
        std::swap(thenWalk, nowWalk);
    const Side then = sideOf(history, thenWalk);
    const Side now = sideOf(history, nowWalk);
    const Index index = indexOf(history, now.asked);
    Comparison comparison;
    comparison.thenWalk = thenWalk;
    comparison.nowWalk = nowWalk;
    comparison.onlyThen = inOrder(catalogue, without(then.asked, now.asked));
    comparison.onlyNow = inOrder(catalogue, without(now.asked, then.asked));
    for (const std::string &point : inOrder(catalogue, now.asked)) {
        PointChange change = comparePoint(catalogue, history, index, point, then, now);
        comparison.pointCounts.add(change.change);
        for (const FindingChange &finding : change.findings)
            comparison.findingCounts.add(finding.change);
        comparison.points.push_back(std::move(change));
    }
    return comparison;
}

} // namespace snugwalk
