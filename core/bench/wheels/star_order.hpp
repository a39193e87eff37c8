// SPDX-License-Identifier: Apache-2.0
// The order in which wheel nuts are tightened, for any number of studs.
#pragma once

#include <vector>

#include "base/result.hpp"

namespace snugwalk {

/// Positions 1 to n, numbered clockwise, in the order they are tightened.
///
/// Odd n: every (n - 1) / 2 studs further. Even n: pairs across the wheel, each next pair as far from all
/// done as it can be (distance round the half circle, the first of equals). \returns a permutation of 1 … n;
/// from n = 5 on no stud follows its neighbor. `OutOfRange` naming `studs`
///          outside 3 to 16.
/// Source:  [PCC-1] the legacy cross pattern for 4 and 8, from memory; the rest by the same rule
/// Tests:   tests/published/bench/wheels/tst_star_order.cpp
[[nodiscard]] Result<std::vector<int>> starOrder(int studs);

} // namespace snugwalk
