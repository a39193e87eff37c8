// SPDX-License-Identifier: Apache-2.0
// The records of one point in the order of time: work, and looks that saw something.
#pragma once

#include "due/history_index.hpp"
#include "walk/walk.hpp"

namespace snugwalk {

/// Calls `work(const Mend &)` and `look(const Mark &)`; at the same moment the look comes first.
template <typename Work, typename Look>
void inOrder(const PointHistory &history, Work work, Look look)
{
    auto mend = history.work.begin();
    for (const MarkOnWalk &m : history.marks) {
        if (!isLook(m.mark->state))
            continue;
        for (; mend != history.work.end() && (*mend)->at.instant < m.mark->at.instant; ++mend)
            work(**mend);
        look(*m.mark);
    }
    for (; mend != history.work.end(); ++mend)
        work(**mend);
}

} // namespace snugwalk
