// SPDX-License-Identifier: Apache-2.0
// Where findings were seen and where the rig was taken, as far as it may be told.
#include "papers/parts.hpp"
#include "report/near_words.hpp"
#include "round/where_seen.hpp"

namespace snugwalk::papers {
void mapBlock(Paper &paper, std::span<const ReportFinding> findings, bool trips)
{
    const PlaceDetail detail = paper.options().place;
    MapBlock map;
    for (const ReportFinding &finding : findings) {
        const auto where = whereSeen(paper.history(), finding.history);
        const auto told = placeToTell(where, detail);
        if (!told)
            continue;
        const auto near = nearToTell(paper.source().places, where, detail);
        map.spots.push_back({finding.number, finding.open.concern.call, *told,
                             nearWords(near, detail, paper.texts(), paper.options().units)});
    }
    if (trips && detail == PlaceDetail::Exact) { // a coarse line would still tell the roads
        for (const Trip &trip : paper.history().trips)
            map.lines.push_back(trip.outline);
    }
    if (!map.spots.empty() || !map.lines.empty())
        paper.add(std::move(map));
}

} // namespace snugwalk::papers
