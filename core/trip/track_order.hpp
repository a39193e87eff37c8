// SPDX-License-Identifier: Apache-2.0
// Bringing the segments of a track file into the order of time.
#pragma once

#include <span>
#include <vector>

#include "base/geo.hpp"

namespace snugwalk {

/// Some receivers write the newest point first, others the newest segment first. A segment that
/// ends before it starts is turned round, then the segments are sorted by their first time. Order
/// within a segment is otherwise left alone: a clock that jumps is for `summarise` to judge.
/// \param starts  index of the first fix of each segment, ascending.
void orderSegments(std::vector<Fix> &fixes, std::span<const std::size_t> starts);

} // namespace snugwalk
