// SPDX-License-Identifier: Apache-2.0
// The question "what changed since last time?": which two walks that means.
#pragma once

#include "compare/compare.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

struct WalkPair {
    Id then;
    Id now;
};

/// The last walk with a look on it, and the one before it that looked at half of its points or more: a
/// full round is not held against a look at a fuel stop. `NotFound` with fewer than two walks.
[[nodiscard]] Result<WalkPair> lastTwo(const RigHistory &history);

} // namespace snugwalk
