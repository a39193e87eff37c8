// SPDX-License-Identifier: Apache-2.0
// Choosing the walk to hold another against.
#include "round/compare.hpp"

#include <algorithm>
#include <set>

namespace snugwalk {
namespace {

using Records = std::vector<const WalkRecord *>;

std::set<std::string_view> lookedAt(const WalkRecord &record)
{
    std::set<std::string_view> points;
    for (const Mark &mark : record.marks) {
        if (mark.state == MarkState::Pass || mark.state == MarkState::Attention)
            points.insert(mark.point);
    }
    return points;
}

bool sharesHalf(const std::set<std::string_view> &points, const WalkRecord &other)
{
    const auto theirs = lookedAt(other);
    const auto common = std::count_if(points.begin(), points.end(),
                                      [&](std::string_view point) { return theirs.count(point) > 0; });
    return 2 * static_cast<std::size_t>(common) >= points.size();
}

// Walks with a look on them, latest first: one that was only begun has nothing to say yet.
Records walksBackwards(const RigHistory &history)
{
    Records walks;
    for (const WalkRecord &record : history.walks) {
        const bool any = std::any_of(record.marks.begin(), record.marks.end(), [](const Mark &mark) {
            return mark.state == MarkState::Pass || mark.state == MarkState::Attention;
        });
        if (any)
            walks.push_back(&record);
    }
    std::sort(walks.begin(), walks.end(), [](const WalkRecord *a, const WalkRecord *b) {
        const Walk &x = a->walk;
        const Walk &y = b->walk;
        return x.started.instant != y.started.instant ? x.started.instant > y.started.instant : x.id > y.id;
    });
    return walks;
}

Error tooFew(const RigHistory &history, std::string_view kind)
{
    return {Errc::NotFound,
            kind.empty()
                ? "there are no two walks to compare"
                : "there are no two walks to compare, the last being of the kind " + std::string(kind),
            history.rig.name, "finish a second walk, then ask again"};
}

WalkPair pairFor(const Walk &now, const std::set<std::string_view> &points, Records::const_iterator earlier,
                 Records::const_iterator end)
{
    const auto same =
        std::find_if(earlier, end, [&](const WalkRecord *r) { return r->walk.kind == now.kind; });
    if (same != end)
        return {(*same)->walk.id, now.id, PairedBy::SameKind};
    const auto like = std::find_if(earlier, end, [&](const WalkRecord *r) { return sharesHalf(points, *r); });
    if (like != end)
        return {(*like)->walk.id, now.id, PairedBy::SamePoints};
    return {(*earlier)->walk.id, now.id, PairedBy::JustBefore};
}

} // namespace

std::string_view slug(PairedBy by)
{
    switch (by) {
    case PairedBy::Named:
        break;
    case PairedBy::SameKind:
        return "same_kind";
    case PairedBy::SamePoints:
        return "same_points";
    case PairedBy::JustBefore:
        return "just_before";
    }
    return "named";
}

Result<WalkPair> lastOfKind(const RigHistory &history, const Id &now)
{
    const auto record = std::find_if(history.walks.begin(), history.walks.end(),
                                     [&](const WalkRecord &r) { return r.walk.id == now; });
    if (record == history.walks.end())
        return Error{Errc::NotFound, "this rig has no such walk", now.shortText(),
                     "see `snugwalk walk list`"};
    const Records walks = walksBackwards(history);
    const auto earlier = std::find_if(walks.begin(), walks.end(), [&](const WalkRecord *r) {
        const auto key = [](const Walk &walk) { return std::pair(walk.started.instant, walk.id); };
        return key(r->walk) < key(record->walk);
    });
    if (earlier == walks.end())
        return tooFew(history, {});
    return pairFor(record->walk, lookedAt(*record), earlier, walks.end());
}

Result<WalkPair> lastTwo(const RigHistory &history, std::string_view kind)
{
    const Records walks = walksBackwards(history);
    const auto now = std::find_if(walks.begin(), walks.end(),
                                  [&](const WalkRecord *r) { return kind.empty() || r->walk.kind == kind; });
    if (now == walks.end() || std::next(now) == walks.end())
        return tooFew(history, kind);
    return pairFor((*now)->walk, lookedAt(**now), std::next(now), walks.end());
}

} // namespace snugwalk
