// SPDX-License-Identifier: Apache-2.0
// Points of two walks side by side.
#include "compare/compare.hpp"

#include <algorithm>
#include <functional>
#include <iterator>

#include "catalogue/pick.hpp"
#include "compare/findings.hpp"
#include "compare/point_records.hpp"
#include "compare/readings_expected.hpp"
#include "compare/statistics.hpp"

namespace snugwalk {
namespace {

// Up to when records of `side` count at a point: its mark, and looks at the point's findings that it
// wrote beside the mark. A mend on the same afternoon comes after.
Instant momentOf(const WalkSide &side, const Mark *mark, const PointRecords &records)
{
    Instant at = mark != nullptr ? mark->at.instant : side.end;
    for (const FindingHistory *f : records.findings) {
        for (const Look &look : f->looks) {
            if (look.walk == side.id)
                at = std::max(at, look.at.instant);
        }
    }
    return at;
}

// The same for a look of another walk.
Instant lookMoment(const Mark &mark, const PointRecords &records)
{
    return momentOf({mark.walk, {}, {}, {}, {}}, &mark, records);
}

// The last look at the point by the end of the earlier walk, apart from the later walk's own.
const Mark *earlierLook(const PointRecords &records, const WalkSide &then, const WalkSide &now)
{
    const Mark *last = nullptr;
    for (const Mark *mark : records.looks) {
        if (mark->at.instant <= then.end && mark->walk != now.id)
            last = mark;
    }
    return last;
}

// From attention to pass by mends: every finding told was mended, and so was every one that was open
// when the point was looked at, even if the mend came before the walk that did not look. Without any
// finding, a mend of the point itself will do.
bool mendedSince(const PointRecords &records, const PointChange &p, Instant looked, Instant by)
{
    bool any = !p.findings.empty();
    for (const FindingChange &f : p.findings) {
        if (f.change != Change::Mended)
            return false;
    }
    for (const FindingHistory *f : records.findings) {
        if (f->finding.opened.instant > looked || statusAt(*f, looked) != FindingStatus::Open)
            continue;
        any = true;
        const FindingStatus now = statusAt(*f, by);
        if (now != FindingStatus::Mended && now != FindingStatus::Confirmed)
            return false;
    }
    return any || std::any_of(records.mends.begin(), records.mends.end(),
                              [&](Instant at) { return at > looked && at <= by; });
}

Change pointChange(const PointChange &p, bool mended)
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
        return mended ? Change::Mended : Change::Gone;
    }
    // attention without a finding that was looked at: new after a pass, else what it was
    return worstOf(p.findings).value_or(p.then == MarkState::Pass ? Change::New : Change::Same);
}

PointChange comparePoint(const ReadingsContext &readings, const PointIndex &index, std::string_view point,
                         const WalkSide &then, const WalkSide &now)
{
    const PointRecords &records = index.of(point);
    const Mark *before = then.mark(point);
    const Mark *after = now.mark(point);
    PointChange p;
    p.point = point;
    if (!isLook(before) && !(before != nullptr && before->state == MarkState::NotFitted)) {
        const Mark *earlier = earlierLook(records, then, now);
        p.carried = earlier != nullptr;
        before = earlier != nullptr ? earlier : before;
    }
    if (before != nullptr) {
        p.then = before->state;
        p.thenAt = before->at;
    }
    p.now = after != nullptr ? after->state : MarkState::NotLooked;
    const Moment from{then.id, momentOf(then, p.carried ? nullptr : before, records), p.then, then.start,
                      then.end};
    const Moment to{now.id, momentOf(now, after, records), p.now, now.start, now.end};
    for (const FindingHistory *f : records.findings) {
        if (auto change = compareFinding(*f, from, to))
            p.findings.push_back(std::move(*change));
    }
    const bool mended = p.then == MarkState::Attention && p.now == MarkState::Pass &&
                        mendedSince(records, p, p.carried ? lookMoment(*before, records) : from.at, to.at);
    p.change = pointChange(p, mended);
    if (isLook(before) && isLook(after) && !after->readings.empty())
        p.readings = readingChanges(readings, records, *before, *after);
    return p;
}

using Views = std::vector<std::string_view>;

// Catalogue order; points that the catalogue does not have come last, by slug.
std::vector<std::string> inOrder(const Catalogue &catalogue, const Views &slugs)
{
    std::vector<std::string> out;
    out.reserve(slugs.size());
    for (const Point &point : catalogue.points()) {
        if (std::binary_search(slugs.begin(), slugs.end(), std::string_view(point.slug)))
            out.push_back(point.slug);
    }
    for (const std::string_view slug : slugs) {
        if (catalogue.find(slug) == nullptr)
            out.emplace_back(slug);
    }
    return out;
}

Views without(const Views &all, const Views &taken)
{
    Views left;
    std::set_difference(all.begin(), all.end(), taken.begin(), taken.end(), std::back_inserter(left));
    return left;
}

// Moves those that `rig` does not have from one list to the other.
void splitByRig(const Catalogue &catalogue, const Rig &rig, std::vector<std::string> &asked,
                std::vector<std::string> &notThere)
{
    const auto lacks = [&](const std::string &slug) {
        const Point *point = catalogue.find(slug);
        return point != nullptr && !applies(*point, rig);
    };
    const auto rest = std::stable_partition(asked.begin(), asked.end(), std::not_fn(lacks));
    notThere.assign(rest, asked.end());
    asked.erase(rest, asked.end());
}

void listPoints(const Catalogue &catalogue, const RigHistory &history, const WalkSide &then,
                const WalkSide &now, Comparison &c)
{
    const Rig &rigThen = rigAsOf(history, then.end);
    const Rig &rigNow = rigAsOf(history, now.end);
    c.onlyThen = inOrder(catalogue, without(then.asked, now.asked));
    c.onlyNow = inOrder(catalogue, without(now.asked, then.asked));
    splitByRig(catalogue, rigNow, c.onlyThen, c.noLongerFitted);
    splitByRig(catalogue, rigThen, c.onlyNow, c.fittedSince);
    if (&rigThen != &rigNow)
        c.rigChanges = rigChanges(rigThen, rigNow);
}

void countRates(Comparison &c)
{
    for (const PointChange &p : c.points) {
        if (p.carried)
            continue;
        c.rates.worse += p.then == MarkState::Pass && p.now == MarkState::Attention;
        c.rates.better += p.then == MarkState::Attention && p.now == MarkState::Pass;
    }
    c.rates.mcnemarP = mcnemarExact(c.rates.better, c.rates.worse);
    c.rates.chanceUp = chanceRateUp(c.rates.better, c.rates.worse);
}

// Under ten readings each stands by itself.
void judgeTogether(Comparison &c)
{
    constexpr std::size_t many = 10;
    constexpr double falseShare = 0.10;
    std::vector<double> p;
    for (const PointChange &point : c.points) {
        for (const ReadingChange &r : point.readings)
            p.push_back(twoSidedP(r.z));
    }
    const std::vector<bool> stand = standAmongMany(p, falseShare);
    std::size_t at = 0;
    for (PointChange &point : c.points) {
        for (ReadingChange &r : point.readings) {
            r.stands = r.changed && (p.size() < many || stand[at]);
            ++at;
            ++c.rates.readings;
            c.rates.readingsChanged += r.changed;
            c.rates.readingsStand += r.stands;
        }
    }
}

bool startedLater(const RigHistory &history, const Id &a, const Id &b)
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
    const WalkSide then = sideOf(history, thenWalk);
    const WalkSide now = sideOf(history, nowWalk);
    const PointIndex index(history, now.asked);
    const ReadingsContext readings{catalogue, history, rigAsOf(history, now.end), replacementsOf(history),
                                   DrivenLog(history)};
    Comparison comparison;
    comparison.thenWalk = thenWalk;
    comparison.nowWalk = nowWalk;
    listPoints(catalogue, history, then, now, comparison);
    comparison.points.reserve(now.asked.size());
    for (const std::string &point : inOrder(catalogue, now.asked)) {
        PointChange change = comparePoint(readings, index, point, then, now);
        comparison.pointCounts.add(change.change);
        for (const FindingChange &finding : change.findings)
            comparison.findingCounts.add(finding.change);
        comparison.points.push_back(std::move(change));
    }
    countRates(comparison);
    judgeTogether(comparison);
    return comparison;
}

} // namespace snugwalk
