// SPDX-License-Identifier: Apache-2.0
// Where findings were seen and where the rig was taken, as far as it may be told.
#include <algorithm>

#include "papers/parts.hpp"

namespace snugwalk::papers {
namespace {

const WalkRecord *walkOf(const Paper &paper, const Id &id)
{
    const auto &walks = paper.history().walks;
    const auto found =
        std::find_if(walks.begin(), walks.end(), [&](const WalkRecord &r) { return r.walk.id == id; });
    return found == walks.end() ? nullptr : &*found;
}

} // namespace

std::optional<GeoPoint> whereSeen(const Paper &paper, const FindingHistory &history)
{
    for (const Look &look : history.looks) {
        if (look.where)
            return look.where;
        const WalkRecord *record = walkOf(paper, look.walk);
        if (record != nullptr && record->walk.where)
            return record->walk.where;
    }
    return std::nullopt;
}

void mapBlock(Paper &paper, std::span<const ReportFinding> findings, bool trips)
{
    const PlaceDetail detail = paper.options().place;
    MapBlock map;
    for (const ReportFinding &finding : findings) {
        if (const auto told = placeToTell(whereSeen(paper, finding.history), detail))
            map.spots.push_back({finding.number, finding.open.concern.call, *told, ""});
    }
    if (trips && detail == PlaceDetail::Exact) { // a coarse line would still tell the roads
        for (const Trip &trip : paper.history().trips)
            map.lines.push_back(trip.outline);
    }
    if (!map.spots.empty() || !map.lines.empty())
        paper.add(std::move(map));
}

} // namespace snugwalk::papers
