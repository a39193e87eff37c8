// SPDX-License-Identifier: Apache-2.0
// The last walk, and points of the hold list that could not be looked at on it.
#pragma once

#include "catalogue/catalogue.hpp"
#include "concern/holds.hpp"

namespace snugwalk {

/// The walk started last among those with a mark by `now`, or null.
[[nodiscard]] const WalkRecord *lastWalk(const RigHistory &history, LocalTime now);

/// Points whose last mark says could not look, on a walk that had them in its own sets, and which are
/// on the hold list. Rule key `could_not_look`. Starting another walk never lifts such a hold; a look
/// or a not fitted does.
[[nodiscard]] std::vector<HoldHit> missedLooks(const Catalogue &catalogue, const RigHistory &history,
                                               LocalTime now);

} // namespace snugwalk
