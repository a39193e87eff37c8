// SPDX-License-Identifier: Apache-2.0
// The state of the rig as each of the two walks ended.
#include "comparison_job.hpp"

#include <algorithm>

#include "concern/state.hpp"

namespace snugwalk {
namespace {

// When a walk that was never finished ended: with its last mark.
LocalTime endOf(const RigHistory &history, const Id &walk)
{
    LocalTime end{};
    for (const WalkRecord &record : history.walks) {
        if (record.walk.id != walk)
            continue;
        end = record.walk.finished.value_or(record.walk.started);
        for (const Mark &mark : record.marks)
            end = std::max(end, mark.at);
    }
    return end;
}

std::map<Id, Call> callsAt(const Catalogue &catalogue, const RigHistory &history, const LocalTime &at)
{
    std::map<Id, Call> calls;
    for (const OpenFinding &open : stateOf(catalogue, history, dueBands(catalogue, history, at), at).open)
        calls[open.id] = open.concern.call;
    return calls;
}

} // namespace

Compared compareWithCalls(const Catalogue &catalogue, const RigHistory &history, const Id &then,
                          const Id &now)
{
    Compared compared;
    compared.comparison = compareWalks(catalogue, history, then, now);
    compared.thenCalls = callsAt(catalogue, history, endOf(history, compared.comparison.thenWalk));
    compared.nowCalls = callsAt(catalogue, history, endOf(history, compared.comparison.nowWalk));
    return compared;
}

} // namespace snugwalk
