// SPDX-License-Identifier: Apache-2.0
// The last numbers of a point against the limits of the hold list.
#include "concern/reading_holds.hpp"

#include <algorithm>
#include <map>

#include "concern/checks.hpp"
#include "rig/names.hpp"

namespace snugwalk {
namespace {

bool isFor(const std::vector<std::string> &list, std::string_view item)
{
    return list.empty() || std::find(list.begin(), list.end(), item) != list.end();
}

void addLimits(const ConcernContext &context, const Point &point, const std::vector<LastReading> &readings,
               std::vector<HoldHit> &hits)
{
    for (const auto &[rule, limit] : context.catalogue.holds().readingsOf(point.slug)) {
        const auto &gross = context.history.rig.ratings.gross;
        const bool isLight = limit->grossOver && gross && gross->si() <= limit->grossOver->si;
        if (isLight || !isFor(limit->kinds, slug(context.history.rig.kind)))
            continue;
        for (const LastReading &last : readings) {
            const Reading &r = last.reading;
            const bool outside =
                (limit->below && r.si < limit->below->si) || (limit->above && r.si > limit->above->si);
            if (r.slug == limit->reading && outside && isFor(limit->places, r.place))
                addHit(hits, *rule, point, r);
        }
    }
}

} // namespace

std::vector<LastReading> lastReadings(const ConcernContext &context, std::string_view point)
{
    const PointHistory &of = context.index.of(point);
    std::map<std::pair<std::string_view, std::string_view>, std::pair<const Reading *, const Mark *>> last;
    for (const MarkOnWalk &m : of.marks) {
        // a mend asks for a new number: what was read before it no longer counts
        if (m.mark->readings.empty() ||
            (!of.work.empty() && m.mark->at.instant <= of.work.back()->at.instant))
            continue;
        for (const Reading &r : m.mark->readings)
            last[{r.slug, r.place}] = {&r, m.mark};
    }
    std::vector<LastReading> out;
    out.reserve(last.size());
    for (const auto &[key, reading] : last)
        out.push_back({*reading.first, reading.second->at, reading.second->walk});
    return out;
}

std::vector<HoldHit> holdsByReading(const ConcernContext &context, const Point &point)
{
    const std::vector<LastReading> readings = lastReadings(context, point.slug);
    std::vector<HoldHit> hits;
    if (readings.empty())
        return hits;
    addLimits(context, point, readings, hits);
    addChecks(context, point, readings, hits);
    return hits;
}

} // namespace snugwalk
