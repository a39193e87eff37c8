// SPDX-License-Identifier: Apache-2.0
// Gathering open findings, holds and the last walk into one state.
#include "concern/state.hpp"

#include <algorithm>
#include <tuple>

#include "catalogue/pick.hpp"
#include "concern/accepted.hpp"
#include "concern/checks.hpp"
#include "concern/missed_looks.hpp"
#include "concern/reading_holds.hpp"
#include "due/ordered.hpp"

namespace snugwalk {
namespace {

Point unknownPoint(const std::string &slug)
{
    Point point; // of a newer catalogue, or a point of the owner's: severity III, and says so by its slug
    point.slug = slug;
    return point;
}

auto rank(const OpenFinding &f)
{
    const CivilDate never = std::chrono::year(9999) / 12 / 31;
    return std::tuple(f.concern.call != Call::Hold, -f.concern.risk, f.due.value_or(never), f.id);
}

void addFindings(const ConcernContext &context, const std::vector<DueBand> &bands, RigState &state)
{
    for (const FindingHistory &f : context.history.findings) {
        const Point *point = context.catalogue.find(f.finding.point);
        const DueBand *band = findBand(bands, f.finding.point);
        OpenFinding open{f.finding.id, f.finding.point, f.finding.defect, FindingStatus::Open, 0, {}, {},
                         false};
        open.concern = concernOf(context, point ? *point : unknownPoint(f.finding.point), f, band);
        if (open.concern.call == Call::None)
            continue;
        open.status = open.concern.waitsForConfirm ? FindingStatus::Mended : FindingStatus::Open;
        open.grade = open.concern.grade;
        if (band != nullptr)
            open.due = band->likely;
        state.open.push_back(std::move(open));
    }
    std::sort(state.open.begin(), state.open.end(),
              [](const OpenFinding &a, const OpenFinding &b) { return rank(a) < rank(b); });
    for (OpenFinding &f : state.open) {
        const Concern &first = state.open.front().concern;
        f.tiedWithFirst = f.concern.call == first.call && f.concern.high >= first.low;
    }
}

void countFindings(RigState &state)
{
    for (const OpenFinding &f : state.open) {
        state.hold += f.concern.call == Call::Hold;
        state.mendSoon += f.concern.call == Call::MendSoon;
        state.watch += f.concern.call == Call::Watch;
        for (const HoldHit &hit : f.concern.holds)
            state.holds.push_back({hit, f.id, false, {}});
    }
}

bool isTold(const RigState &state, const HoldHit &hit)
{
    return std::any_of(state.holds.begin(), state.holds.end(),
                       [&](const StateHold &h) { return h.hit == hit; });
}

void addHold(RigState &state, HoldHit hit)
{
    if (isTold(state, hit))
        return;
    ++state.hold;
    state.holds.push_back({std::move(hit), Id(), false, {}});
}

void addMissed(const ConcernContext &context, RigState &state)
{
    for (MissedLook &missed : missedLooks(context)) {
        const Acceptance *accepted = acceptanceOf(*missed.mark, context.history, context.now);
        ++state.hold;
        state.accepted += accepted != nullptr;
        state.holds.push_back({std::move(missed.hit), Id(), true,
                               accepted != nullptr ? std::optional(*accepted) : std::nullopt});
    }
}

void addPointHolds(const ConcernContext &context, RigState &state)
{
    for (const Point &point : context.catalogue.points()) {
        if (!isOnRig(point, context.history.rig)) // a hidden point holds like any other
            continue;
        for (HoldHit &hit : holdsByReading(context, point))
            addHold(state, std::move(hit));
        for (HoldHit &hit : holdsByEvent(context, point))
            addHold(state, std::move(hit));
    }
    addMissed(context, state);
    for (const StateHold &h : state.holds)
        state.forbids.insert(h.hit.forbids);
}

void addOutlook(const ConcernContext &context, const std::vector<DueBand> &bands, RigState &state)
{
    ConcernsByPoint concerns;
    for (const OpenFinding &f : state.open)
        concerns.emplace(f.point, &f.concern);
    state.points = pointConcerns(context, bands, concerns);
    state.outlook = outlookOf(state.points);
    if (!state.open.empty()) {
        const OpenFinding &f = state.open.front();
        state.worst =
            WorstItem{f.id, f.point, f.concern.number, f.concern.low, f.concern.high, f.concern.call, 0};
        for (std::size_t i = 1; i < state.open.size(); ++i)
            state.worst->tied += state.open[i].tiedWithFirst;
    } else if (!state.points.empty()) {
        const PointConcern &p = state.points.front();
        state.worst = WorstItem{Id(), p.point, p.number, p.low, p.high, Call::None, 0};
        for (std::size_t i = 1; i < state.points.size(); ++i)
            state.worst->tied += state.points[i].tiedWithFirst;
    }
}

void addLastWalk(const RigHistory &history, LocalTime now, RigState &state)
{
    const WalkRecord *last = lastWalk(history, now);
    if (last == nullptr)
        return;
    state.walk = last->walk.id;
    state.lookedSince = last->walk.started;
    state.by = last->walk.by;
    for (const Mark &mark : last->marks) {
        state.lookedAt += mark.state == MarkState::Pass || mark.state == MarkState::Attention;
        if (mark.state == MarkState::CouldNotLook)
            state.couldNotLook.push_back({mark.point, mark.reason, false});
    }
    std::sort(state.couldNotLook.begin(), state.couldNotLook.end(),
              [](const CouldNotLook &a, const CouldNotLook &b) { return a.point < b.point; });
    for (CouldNotLook &missed : state.couldNotLook) {
        missed.holds = std::any_of(state.holds.begin(), state.holds.end(), [&](const StateHold &h) {
            return h.acceptable && h.hit.point == missed.point;
        });
    }
}

} // namespace

RigState stateOf(const Catalogue &catalogue, const RigHistory &history, const std::vector<DueBand> &bands,
                 LocalTime now)
{
    const ConcernContext context(catalogue, history, now);
    RigState state;
    addFindings(context, bands, state);
    countFindings(state);
    addPointHolds(context, state);
    addOutlook(context, bands, state);
    addLastWalk(history, now, state);
    for (const Point *point : hiddenInSight(catalogue, history.rig))
        state.hidden.push_back({point->slug, *point->hidden});
    for (const DueBand &band : bands) {
        state.pastDue += band.pastDue;
        state.dueNow += band.dueNow;
        state.neverLooked += band.rule == "never_looked";
    }
    return state;
}

} // namespace snugwalk
