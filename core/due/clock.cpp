// SPDX-License-Identifier: Apache-2.0
// Clocks from marks and mends, in the order of time.
#include "due/clock.hpp"

#include <algorithm>
#include <vector>

#include "due/usage.hpp"

namespace snugwalk {
namespace {

// At the same moment a look comes before the work that followed from it.
enum class Kind { NotFitted, CouldNotLook, Look, Work };

struct Event {
    LocalTime at;
    Kind kind = Kind::Look;
    Id id;
    std::string action;
};

using Events = std::map<std::string, std::vector<Event>, std::less<>>;

Kind kindOf(MarkState state)
{
    switch (state) {
    case MarkState::Pass:
    case MarkState::Attention:
        return Kind::Look;
    case MarkState::NotFitted:
        return Kind::NotFitted;
    case MarkState::CouldNotLook:
    case MarkState::NotLooked:
        break;
    }
    return Kind::CouldNotLook;
}

void addMarks(const RigHistory &history, Instant now, Events &events)
{
    for (const WalkRecord &record : history.walks) {
        for (const Mark &mark : record.marks) {
            if (mark.state != MarkState::NotLooked && mark.at.instant <= now)
                events[mark.point].push_back({mark.at, kindOf(mark.state), mark.id, {}});
        }
    }
}

void addMends(const RigHistory &history, Instant now, Events &events)
{
    std::map<Id, std::string> pointOf;
    for (const FindingHistory &f : history.findings)
        pointOf[f.finding.id] = f.finding.point;
    for (const Mend &mend : history.mends) {
        if (mend.at.instant > now)
            continue;
        std::vector<std::string> points = mend.points;
        for (const Id &id : mend.findings) {
            if (const auto found = pointOf.find(id); found != pointOf.end())
                points.push_back(found->second);
        }
        std::sort(points.begin(), points.end());
        points.erase(std::unique(points.begin(), points.end()), points.end());
        for (const std::string &point : points)
            events[point].push_back({mend.at, Kind::Work, mend.id, mend.action});
    }
}

void start(PointClock &clock, const Event &event, const std::string &by)
{
    clock.from = event.at;
    clock.startedBy = by;
    clock.keptDays = 0.0;
    clock.keptDistance = Distance();
}

void keepHalf(PointClock &clock, const Event &event, const RigHistory &history)
{
    if (!clock.from)
        return; // half of an unknown age is unknown
    const Instant from = clock.from->instant;
    const double days =
        std::chrono::duration<double, std::chrono::days::period>(event.at.instant - from).count();
    clock.keptDays = (clock.keptDays + days) / 2.0;
    clock.keptDistance = (clock.keptDistance + distanceBetween(history, from, event.at.instant)) / 2.0;
    clock.from = event.at;
    clock.startedBy = event.action;
}

void apply(PointClock &clock, const Event &event, const RigHistory &history)
{
    switch (event.kind) {
    case Kind::NotFitted:
        clock.notFitted = true;
        return;
    case Kind::CouldNotLook:
        clock.couldNotLook = event.at;
        return;
    case Kind::Look:
        clock.notFitted = false;
        clock.couldNotLook.reset();
        clock.lastLook = event.at;
        clock.lastWork = event.at;
        start(clock, event, "look");
        return;
    case Kind::Work:
        break;
    }
    clock.notFitted = false; // nobody works on what is not there
    if (event.action == "replace" || event.action == "clean" || event.action == "lubricate")
        start(clock, event, event.action);
    else if (event.action == "reseal" || event.action == "retorque")
        keepHalf(clock, event, history);
    if (event.action == "replace" || event.action == "retorque")
        clock.lastWork = event.at;
}

} // namespace

std::map<std::string, PointClock, std::less<>> clocksOf(const RigHistory &history, LocalTime now)
{
    Events events;
    addMarks(history, now.instant, events);
    addMends(history, now.instant, events);
    std::map<std::string, PointClock, std::less<>> clocks;
    for (auto &[point, list] : events) {
        std::sort(list.begin(), list.end(), [](const Event &a, const Event &b) {
            if (a.at.instant != b.at.instant)
                return a.at.instant < b.at.instant;
            return a.kind != b.kind ? a.kind < b.kind : a.id < b.id;
        });
        for (const Event &event : list)
            apply(clocks[point], event, history);
    }
    return clocks;
}

} // namespace snugwalk
