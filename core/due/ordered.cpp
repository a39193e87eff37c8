// SPDX-License-Identifier: Apache-2.0
// The order of a finding's records.
#include "due/ordered.hpp"

namespace snugwalk {

FindingHistory ordered(FindingHistory history)
{
    orderByTime(history.looks);
    orderByTime(history.mends);
    orderByTime(history.pointPasses);
    std::sort(history.photos.begin(), history.photos.end(), [](const Photo &a, const Photo &b) {
        return a.added.instant != b.added.instant ? a.added.instant < b.added.instant : a.id < b.id;
    });
    return history;
}

const Look *lastLook(const FindingHistory &orderedHistory, Instant when)
{
    const Look *last = nullptr;
    for (const Look &look : orderedHistory.looks) {
        if (look.at.instant <= when)
            last = &look;
    }
    return last;
}

} // namespace snugwalk
