// SPDX-License-Identifier: Apache-2.0
// Which failed looks hold the rig.
#include "concern/missed_looks.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "due/ordered.hpp"
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

struct Last {
    const Mark *mark = nullptr;
    const Walk *walk = nullptr;
};

std::map<std::string, Last> lastMarks(const RigHistory &history, LocalTime now)
{
    std::map<std::string, Last> last;
    for (const WalkRecord &record : history.walks) {
        for (const Mark &mark : record.marks) {
            Last &known = last[mark.point];
            if (mark.state != MarkState::NotLooked && mark.at.instant <= now.instant &&
                (known.mark == nullptr || isBefore(*known.mark, mark)))
                known = {&mark, &record.walk};
        }
    }
    return last;
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

std::vector<HoldHit> missedLooks(const Catalogue &catalogue, const RigHistory &history, LocalTime now)
{
    std::vector<HoldHit> hits;
    for (const auto &[slug, last] : lastMarks(history, now)) {
        const Point *point = catalogue.find(slug);
        if (last.mark == nullptr || last.mark->state != MarkState::CouldNotLook || point == nullptr ||
            !isOnHoldList(*point) || ownPoints(catalogue, last.walk->kind).count(slug) == 0)
            continue;
        hits.push_back({point->hold.value_or(0),
                        "could_not_look",
                        slug,
                        {},
                        point->forbids.empty() ? "move" : point->forbids,
                        std::nullopt,
                        Dimension::Count});
    }
    return hits;
}

} // namespace snugwalk
