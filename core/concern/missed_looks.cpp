// SPDX-License-Identifier: Apache-2.0
// Which failed looks hold the rig.
#include "concern/missed_looks.hpp"

#include <algorithm>
#include <set>

#include "due/severity.hpp"

namespace snugwalk {
namespace {

// The sets walked before a move belong to every walk that carries their points, a full round too.
std::set<std::string, std::less<>> ownPoints(const Catalogue &catalogue, const std::string &kindSlug)
{
    std::vector<std::string> sets = {"every_move", "first_of_day", "first_of_trip"};
    if (const WalkKind *kind = catalogue.kind(kindSlug))
        sets.insert(sets.end(), kind->sets.begin(), kind->sets.end());
    std::set<std::string, std::less<>> points;
    for (const std::string &set : sets) {
        for (const TapeLine &line : catalogue.set(set))
            points.insert(line.points.begin(), line.points.end());
    }
    return points;
}

bool isWeighed(const Catalogue &catalogue, const Point &point)
{
    const HoldRule *rule = point.hold ? catalogue.holds().find(std::to_string(*point.hold)) : nullptr;
    return rule != nullptr && !rule->missedLookHolds;
}

} // namespace

const WalkRecord *lastWalk(const RigHistory &history, LocalTime now)
{
    const WalkRecord *last = nullptr;
    for (const WalkRecord &record : history.walks) {
        const bool begun = std::any_of(record.marks.begin(), record.marks.end(),
                                       [&](const Mark &mark) { return mark.at.instant <= now.instant; });
        const auto key = [](const WalkRecord &r) { return std::pair(r.walk.started.instant, r.walk.id); };
        if (begun && (last == nullptr || key(*last) < key(record)))
            last = &record;
    }
    return last;
}

std::vector<MissedLook> missedLooks(const ConcernContext &context)
{
    std::vector<MissedLook> missed;
    for (const Point &point : context.catalogue.points()) {
        const MarkOnWalk *last = context.index.of(point.slug).lastMark();
        if (last == nullptr || last->mark->state != MarkState::CouldNotLook || !isOnHoldList(point) ||
            isWeighed(context.catalogue, point) ||
            ownPoints(context.catalogue, last->walk->kind).count(point.slug) == 0)
            continue;
        missed.push_back({{point.hold.value_or(0),
                           "could_not_look",
                           point.slug,
                           {},
                           forbiddenBy(point),
                           std::nullopt,
                           Dimension::Count},
                          last->mark});
    }
    std::sort(missed.begin(), missed.end(),
              [](const MissedLook &a, const MissedLook &b) { return a.hit.point < b.hit.point; });
    return missed;
}

} // namespace snugwalk
