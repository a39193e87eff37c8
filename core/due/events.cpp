// SPDX-License-Identifier: Apache-2.0
// Which happenings are still waiting for a look.
#include "due/events.hpp"

#include <algorithm>

#include "due/ordered.hpp"
#include "due/usage.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view wheelFitted = "wheel_fitted";
constexpr std::array rungs = {miles(10.0), miles(25.0), miles(50.0), miles(100.0)};

bool lists(const std::vector<std::string> &list, std::string_view item)
{
    return std::find(list.begin(), list.end(), item) != list.end();
}

} // namespace

bool makesDue(const Catalogue &catalogue, std::string_view event, const Point &point)
{
    const auto found = catalogue.events().find(std::string(event));
    return (found != catalogue.events().end() && lists(found->second, point.slug)) ||
           lists(point.interval.uses, event);
}

const Happening *unanswered(const Catalogue &catalogue, const RigHistory &history, const Point &point,
                            const PointClock &clock, LocalTime now)
{
    const Happening *first = nullptr;
    for (const Happening &h : history.happenings) {
        const bool answered = clock.lastWork && clock.lastWork->instant > h.at.instant;
        if (h.kind == wheelFitted || h.at.instant > now.instant || answered ||
            !makesDue(catalogue, h.kind, point))
            continue;
        if (first == nullptr || isBefore(h, *first))
            first = &h;
    }
    return first;
}

std::optional<Rung> openRung(const Catalogue &catalogue, const RigHistory &history, const Point &point,
                             const PointClock &clock, LocalTime now)
{
    const Happening *last = nullptr;
    for (const Happening &h : history.happenings) {
        if (h.kind == wheelFitted && h.at.instant <= now.instant && (last == nullptr || isBefore(*last, h)))
            last = &h;
    }
    if (last == nullptr || !makesDue(catalogue, wheelFitted, point))
        return std::nullopt;
    Distance looked;
    if (clock.lastWork && clock.lastWork->instant > last->at.instant)
        looked = distanceBetween(history, last->at.instant, clock.lastWork->instant);
    for (std::size_t i = 0; i + 1 < rungs.size(); ++i) {
        if (looked < rungs[i])
            return Rung{last->at, rungs[i], rungs[i + 1]};
    }
    return std::nullopt;
}

} // namespace snugwalk
