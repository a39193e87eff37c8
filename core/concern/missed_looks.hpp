// SPDX-License-Identifier: Apache-2.0
// The last walk, and points of the hold list that could not be looked at on it.
#pragma once

#include "concern/context.hpp"
#include "concern/holds.hpp"

namespace snugwalk {

/// The walk started last among those with a mark by `now`, or null.
[[nodiscard]] const WalkRecord *lastWalk(const RigHistory &history, LocalTime now);

/// A failed look that holds, and its mark.
struct MissedLook {
    HoldHit hit; ///< rule key `could_not_look`
    const Mark *mark = nullptr;
};

/// Points whose last mark says could not look, on a walk that had them in its own sets, and which are
/// on the hold list, by slug. The sets walked before a move belong to every walk that carries their
/// points, a full round too; what is weighed (rules with `missed_look_holds` false) does not hold.
/// Starting another walk never lifts such a hold; a look or a not fitted does.
[[nodiscard]] std::vector<MissedLook> missedLooks(const ConcernContext &context);

} // namespace snugwalk
