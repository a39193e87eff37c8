// SPDX-License-Identifier: Apache-2.0
// Whether a decision to move once is still in force.
#pragma once

#include "concern/context.hpp"

namespace snugwalk {

/// In force from its moment until the rig is uncoupled (a walk on arrival or parked begins, or a stay)
/// and for 24 hours at most.
[[nodiscard]] bool isInForce(const Acceptance &acceptance, const RigHistory &history, LocalTime now);

/// The acceptance that covers a could-not-look `mark`: of the same walk and point, not older than the
/// mark, in force; or null. The latest when there are several.
[[nodiscard]] const Acceptance *acceptanceOf(const Mark &mark, const RigHistory &history, LocalTime now);

} // namespace snugwalk
