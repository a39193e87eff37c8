// SPDX-License-Identifier: Apache-2.0
// One journey, a day at most.
#include "concern/accepted.hpp"

#include <algorithm>

#include "due/ordered.hpp"

namespace snugwalk {
namespace {

constexpr auto longest = std::chrono::hours(24);

} // namespace

bool isInForce(const Acceptance &acceptance, const RigHistory &history, LocalTime now)
{
    const Instant from = acceptance.at.instant;
    const auto between = [&](Instant when) { return when > from && when <= now.instant; };
    if (now.instant < from || now.instant - from > longest)
        return false;
    const bool walked =
        std::any_of(history.walks.begin(), history.walks.end(), [&](const WalkRecord &record) {
            const bool uncoupled = record.walk.kind == "on_arrival" || record.walk.kind == "parked";
            return uncoupled && between(record.walk.started.instant);
        });
    return !walked && std::none_of(history.stays.begin(), history.stays.end(),
                                   [&](const Stay &stay) { return between(stay.from.instant); });
}

const Acceptance *acceptanceOf(const Mark &mark, const RigHistory &history, LocalTime now)
{
    const Acceptance *last = nullptr;
    for (const Acceptance &a : history.acceptances) {
        const bool covers = a.walk == mark.walk && a.point == mark.point && a.at.instant >= mark.at.instant;
        if (covers && isInForce(a, history, now) && (last == nullptr || isBefore(*last, a)))
            last = &a;
    }
    return last;
}

} // namespace snugwalk
