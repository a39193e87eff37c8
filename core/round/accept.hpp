// SPDX-License-Identifier: Apache-2.0
// The question "may I move it once?": whether a hold is one that a person can accept.
#pragma once

#include <string_view>

#include "round/state.hpp"

namespace snugwalk {

/// What an acceptance of `point` would cover, without reason and name yet: rig, walk, point.
/// \returns `Conflict` for a found hold, which nobody accepts, and for a point already accepted;
///          `NotFound` when no look at the point failed in a way that holds.
[[nodiscard]] Result<Acceptance> acceptable(const Standing &standing, std::string_view point);

} // namespace snugwalk
