// SPDX-License-Identifier: Apache-2.0
// Leaving out what came later, and asking the same question again.
#include "round/states_then.hpp"

#include <algorithm>

#include "due/band.hpp"

namespace snugwalk {
namespace {

template <typename List, typename IsLater>
void leaveOut(List &list, IsLater isLater)
{
    list.erase(std::remove_if(list.begin(), list.end(), isLater), list.end());
}

Rig rigAsOf(const RigHistory &history, Instant when)
{
    const RigVersion *then = nullptr;
    for (const RigVersion &version : history.rigs) {
        if (then == nullptr || version.from.instant <= when)
            then = &version;
    }
    return then == nullptr ? history.rig : then->rig;
}

void cutFindings(RigHistory &history, Instant when)
{
    leaveOut(history.findings, [&](const FindingHistory &f) { return f.finding.opened.instant > when; });
    for (FindingHistory &finding : history.findings) {
        leaveOut(finding.looks, [&](const Look &look) { return look.at.instant > when; });
        leaveOut(finding.mends, [&](const Mend &mend) { return mend.at.instant > when; });
        leaveOut(finding.pointPasses, [&](const Mark &mark) { return mark.at.instant > when; });
    }
}

std::optional<LocalTime> endOf(const WalkRecord &record)
{
    std::optional<LocalTime> end = record.walk.finished;
    if (record.marks.empty())
        return std::nullopt;
    for (const Mark &mark : record.marks) {
        if (!end || mark.at.instant > end->instant)
            end = mark.at;
    }
    return end;
}

StateThen stateAt(const Catalogue &catalogue, const RigHistory &history, LocalTime at)
{
    const RigHistory then = historyAsOf(history, at.instant);
    const std::vector<DueBand> bands = dueBands(catalogue, then, at);
    return {at, Id(), {}, stateOf(catalogue, then, bands, at)};
}

ConcernThen begun(const StateThen &then)
{
    ConcernThen concern;
    concern.at = then.at;
    concern.kind = then.kind;
    return concern;
}

std::optional<ConcernThen> worstOf(const StateThen &then)
{
    if (!then.state.worst)
        return std::nullopt;
    const WorstItem &worst = *then.state.worst;
    ConcernThen concern = begun(then);
    concern.point = worst.point;
    concern.number = worst.number;
    concern.low = worst.low;
    concern.high = worst.high;
    concern.call = worst.call;
    return concern;
}

std::optional<ConcernThen> ofPoint(const StateThen &then, const std::string &point)
{
    for (const PointConcern &p : then.state.points) {
        if (p.point != point)
            continue;
        ConcernThen concern = begun(then);
        concern.point = point;
        concern.number = p.number;
        concern.low = p.low;
        concern.high = p.high;
        for (const OpenFinding &open : then.state.open) {
            if (open.point == point)
                concern.call = std::max(concern.call, open.concern.call);
        }
        return concern;
    }
    return std::nullopt;
}

} // namespace

RigHistory historyAsOf(const RigHistory &history, Instant when)
{
    RigHistory then = history;
    then.rig = rigAsOf(history, when);
    leaveOut(then.rigs, [&](const RigVersion &version) { return version.from.instant > when; });
    leaveOut(then.walks, [&](const WalkRecord &record) { return record.walk.started.instant > when; });
    for (WalkRecord &record : then.walks) {
        leaveOut(record.marks, [&](const Mark &mark) { return mark.at.instant > when; });
        if (record.walk.finished && record.walk.finished->instant > when)
            record.walk.finished.reset();
    }
    cutFindings(then, when);
    leaveOut(then.mends, [&](const Mend &mend) { return mend.at.instant > when; });
    leaveOut(then.trips, [&](const Trip &trip) { return trip.end.instant > when; });
    leaveOut(then.stays, [&](const Stay &stay) { return stay.from.instant > when; });
    for (Stay &stay : then.stays) {
        if (stay.to && stay.to->instant > when)
            stay.to.reset();
    }
    leaveOut(then.happenings, [&](const Happening &one) { return one.at.instant > when; });
    leaveOut(then.acceptances, [&](const Acceptance &one) { return one.at.instant > when; });
    leaveOut(then.stocks, [&](const Stock &one) { return one.at.instant > when; });
    return then;
}

std::vector<StateThen> statesThen(const Catalogue &catalogue, const RigHistory &history, LocalTime now,
                                  std::size_t most)
{
    struct End {
        LocalTime at;
        const WalkRecord *record;
    };
    std::vector<End> ends;
    for (const WalkRecord &record : history.walks) {
        const auto end = endOf(record);
        if (end && end->instant <= now.instant)
            ends.push_back({*end, &record});
    }
    std::stable_sort(ends.begin(), ends.end(),
                     [](const End &a, const End &b) { return a.at.instant < b.at.instant; });
    if (ends.size() > most)
        ends.erase(ends.begin(), ends.end() - static_cast<std::ptrdiff_t>(most));
    std::vector<StateThen> states;
    for (const End &end : ends) {
        StateThen then = stateAt(catalogue, history, end.at);
        then.walk = end.record->walk.id;
        then.kind = end.record->walk.kind;
        states.push_back(std::move(then));
    }
    if (!states.empty())
        states.push_back(stateAt(catalogue, history, now));
    return states;
}

std::vector<ConcernThen> concernsThen(const std::vector<StateThen> &states, const ConcernOf &whose)
{
    std::vector<ConcernThen> out;
    for (const StateThen &then : states) {
        if (whose.finding.isNull()) {
            const auto one = whose.point.empty() ? worstOf(then) : ofPoint(then, whose.point);
            if (one)
                out.push_back(*one);
            continue;
        }
        ConcernThen concern = begun(then);
        concern.closed = true;
        for (const OpenFinding &open : then.state.open) {
            if (open.id != whose.finding)
                continue;
            concern.closed = false;
            concern.point = open.point;
            concern.number = open.concern.number;
            concern.low = open.concern.low;
            concern.high = open.concern.high;
            concern.call = open.concern.call;
        }
        if (!concern.closed || !out.empty()) // before it was opened there is nothing to tell
            out.push_back(concern);
    }
    return out;
}

} // namespace snugwalk
