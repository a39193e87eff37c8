// SPDX-License-Identifier: Apache-2.0
// Putting records into one order, so that the order in which they arrived never changes a result.
#pragma once

#include <algorithm>
#include <vector>

#include "walk/finding_state.hpp"

namespace snugwalk {

/// By time, then by id: a total order over what devices wrote apart from each other.
template <typename Record>
[[nodiscard]] bool isBefore(const Record &a, const Record &b)
{
    return a.at.instant != b.at.instant ? a.at.instant < b.at.instant : a.id < b.id;
}

template <typename Record>
void orderByTime(std::vector<Record> &records)
{
    if (!std::is_sorted(records.begin(), records.end(), isBefore<Record>))
        std::sort(records.begin(), records.end(), isBefore<Record>);
}

/// A copy with looks, mends, passes and photos in order.
[[nodiscard]] FindingHistory ordered(FindingHistory history);

/// The look that counts at `when`, ties broken by id; nothing before the first.
[[nodiscard]] const Look *lastLook(const FindingHistory &orderedHistory, Instant when);

} // namespace snugwalk
