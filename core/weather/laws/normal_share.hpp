// SPDX-License-Identifier: Apache-2.0
// The share of a normal spread that lies below a point.
#pragma once

#include <cmath>
#include <numbers>

namespace snugwalk {

[[nodiscard]] inline double normalShare(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

} // namespace snugwalk
