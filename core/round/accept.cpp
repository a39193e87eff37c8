// SPDX-License-Identifier: Apache-2.0
// Found holds first: they are never accepted.
#include "round/accept.hpp"

#include "due/history_index.hpp"

namespace snugwalk {

Result<Acceptance> acceptable(const Standing &standing, std::string_view point)
{
    const std::string where(point);
    const StateHold *missed = nullptr;
    for (const StateHold &hold : standing.state.holds) {
        if (hold.hit.point != point)
            continue;
        if (!hold.acceptable)
            return Error{Errc::Conflict, "this hold was found by a look; nobody can accept it",
                         where + ", rule " + hold.hit.rule, "mend it, then look again"};
        missed = &hold;
    }
    if (missed == nullptr)
        return Error{Errc::NotFound, "no hold because a look failed stands at this point", where,
                     "see `snugwalk state` for what holds"};
    if (missed->accepted)
        return Error{Errc::Conflict, "accepted already by " + missed->accepted->by, where,
                     "it ends when the rig is uncoupled, or after 24 hours"};
    const HistoryIndex index(standing.history, standing.now);
    const MarkOnWalk *last = index.of(point).lastMark();
    SNUG_ASSERT(last != nullptr);
    Acceptance acceptance;
    acceptance.rig = standing.history.rig.id;
    acceptance.walk = last->mark->walk;
    acceptance.point = where;
    return acceptance;
}

} // namespace snugwalk
