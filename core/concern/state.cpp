// SPDX-License-Identifier: Apache-2.0
// Gathering open findings, holds and the last walk into one state.
#include "concern/state.hpp"

#include <algorithm>
#include <array>
#include <tuple>

#include "catalogue/pick.hpp"
#include "concern/missed_looks.hpp"
#include "concern/reading_holds.hpp"
#include "due/clock.hpp"
#include "due/events.hpp"
#include "due/ordered.hpp"

namespace snugwalk {
namespace {

// Hold 15 names these; the other events only make their points due.
constexpr std::array<std::string_view, 4> holdingEvents = {"blow_out", "kerb_strike", "flood", "impact"};

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

void addFindings(const Catalogue &catalogue, const RigHistory &history, const std::vector<DueBand> &bands,
                 LocalTime now, RigState &state)
{
    for (const FindingHistory &unordered : history.findings) {
        const FindingHistory f = ordered(unordered);
        const Point *point = catalogue.find(f.finding.point);
        const DueBand *band = findBand(bands, f.finding.point);
        OpenFinding open{f.finding.id, f.finding.point, f.finding.defect, statusAt(f, now.instant), 0, {}, {},
                         false};
        open.concern = concernOf(point ? *point : unknownPoint(f.finding.point), f, history, band, now);
        if (open.concern.call == Call::None)
            continue;
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
            state.holds.push_back({hit, f.id, false});
    }
}

bool isTold(const RigState &state, const HoldHit &hit)
{
    return std::any_of(state.holds.begin(), state.holds.end(),
                       [&](const StateHold &h) { return h.hit == hit; });
}

void addHold(RigState &state, HoldHit hit, bool acceptable)
{
    if (isTold(state, hit))
        return;
    ++state.hold;
    state.holds.push_back({std::move(hit), Id(), acceptable});
}

void addEventHolds(const Catalogue &catalogue, const RigHistory &history, const PointClock &clock,
                   const Point &point, LocalTime now, RigState &state)
{
    RigHistory only; // the holding happenings alone: an earlier harmless one must not hide them
    for (const Happening &h : history.happenings) {
        if (std::find(holdingEvents.begin(), holdingEvents.end(), h.kind) != holdingEvents.end())
            only.happenings.push_back(h);
    }
    if (const Happening *open = unanswered(catalogue, only, point, clock, now))
        addHold(state, {15, "15", point.slug, open->kind, "move", std::nullopt, Dimension::Count}, false);
}

void addPointHolds(const Catalogue &catalogue, const RigHistory &history, LocalTime now, RigState &state)
{
    const auto clocks = clocksOf(history, now);
    for (const Point &point : catalogue.points()) {
        if (!isOnRig(point, history.rig)) // a hidden point holds like any other
            continue;
        for (HoldHit &hit : holdsByReading(point, history, now))
            addHold(state, std::move(hit), false);
        const auto clock = clocks.find(point.slug);
        if (isOnHoldList(point) && !history.happenings.empty())
            addEventHolds(catalogue, history, clock == clocks.end() ? PointClock() : clock->second, point,
                          now, state);
    }
    for (HoldHit &hit : missedLooks(catalogue, history, now))
        addHold(state, std::move(hit), true);
    for (const StateHold &h : state.holds)
        state.forbids.insert(h.hit.forbids);
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
    RigState state;
    addFindings(catalogue, history, bands, now, state);
    countFindings(state);
    addPointHolds(catalogue, history, now, state);
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
