// SPDX-License-Identifier: Apache-2.0
// Bringing the parts of a track file into the order of time.
#pragma once

#include <span>
#include <vector>

#include "base/geo.hpp"

namespace snugwalk {

/// Some receivers write the newest point first, others the newest segment first. A segment whose
/// later part is the earlier in time is turned round, then the segments are sorted by the time in
/// their middle. Order within a segment is otherwise left alone: a clock that jumps is for
/// `summarise` to judge.
/// \param starts  index of the first fix of each segment, ascending.
void orderSegments(std::vector<Fix> &fixes, std::span<const std::size_t> starts);

/// The same for a log without segments: each run of rising times is one. Logs are often several
/// recordings put together.
void orderRuns(std::vector<Fix> &fixes);

} // namespace snugwalk
