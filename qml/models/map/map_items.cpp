// SPDX-License-Identifier: Apache-2.0
// From a history to spots and lines.
#include "map_items.hpp"

#include <algorithm>

#include "round/where_seen.hpp"

namespace snugwalk {
namespace {

MapItem::Kind kindOf(const Snapshot &snapshot, const FindingHistory &finding)
{
    const std::vector<OpenFinding> &open = snapshot.state.open;
    const auto found = std::find_if(open.begin(), open.end(),
                                    [&](const OpenFinding &o) { return o.id == finding.finding.id; });
    if (found == open.end())
        return MapItem::Kind::PastFinding;
    switch (found->concern.call) {
    case Call::Hold:
        return MapItem::Kind::Hold;
    case Call::MendSoon:
        return MapItem::Kind::MendSoon;
    case Call::Watch:
        return MapItem::Kind::Watch;
    case Call::None:
        break;
    }
    return MapItem::Kind::Finding;
}

} // namespace

const char *slug(MapItem::Kind kind)
{
    switch (kind) {
    case MapItem::Kind::TripEnd:
        return "end";
    case MapItem::Kind::Stay:
        return "stay";
    case MapItem::Kind::PastFinding:
        return "past";
    case MapItem::Kind::Finding:
        return "open";
    case MapItem::Kind::Watch:
        return "watch";
    case MapItem::Kind::MendSoon:
        return "mend";
    case MapItem::Kind::Hold:
        return "hold";
    }
    return "end";
}

MapItems mapItems(const Snapshot &snapshot, const MapWish &wish)
{
    MapItems items;
    if (!snapshot.history)
        return items;
    const RigHistory &history = *snapshot.history;
    if (wish.findings) {
        for (const FindingHistory &finding : history.findings) {
            const auto where = whereSeen(history, finding);
            const MapItem::Kind kind = kindOf(snapshot, finding);
            if (where && isValid(*where) && (wish.past || kind != MapItem::Kind::PastFinding))
                items.spots.push_back({kind, finding.finding.id, *where});
        }
    }
    if (wish.stays) {
        for (const Stay &stay : history.stays) {
            if (isValid(stay.place))
                items.spots.push_back({MapItem::Kind::Stay, stay.id, stay.place});
        }
    }
    if (wish.trips) {
        for (const Trip &trip : history.trips) {
            if (trip.outline.size() < 2)
                continue;
            items.spots.push_back({MapItem::Kind::TripEnd, trip.id, trip.outline.back()});
            items.lines.push_back({trip.id, trip.road, trip.outline});
        }
    }
    return items;
}

bool hasMapItems(const Snapshot &snapshot) { return !mapItems(snapshot, {}).spots.empty(); }

} // namespace snugwalk
