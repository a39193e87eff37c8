// SPDX-License-Identifier: Apache-2.0
// Looks in their order, each with its walk.
#include "round/where_seen.hpp"

#include <algorithm>

namespace snugwalk {

std::optional<GeoPoint> whereSeen(const RigHistory &history, const FindingHistory &finding)
{
    for (const Look &look : finding.looks) {
        if (look.where)
            return look.where;
        const auto record = std::find_if(history.walks.begin(), history.walks.end(),
                                         [&](const WalkRecord &r) { return r.walk.id == look.walk; });
        if (record != history.walks.end() && record->walk.where)
            return record->walk.where;
    }
    return std::nullopt;
}

} // namespace snugwalk
