// SPDX-License-Identifier: Apache-2.0
// A comparison and a trend as JSON.
#pragma once

#include "base/value.hpp"
#include "due/trend/trend.hpp"
#include "round/compare.hpp"

namespace snugwalk::cli {

[[nodiscard]] Value comparisonJson(const Comparison &comparison, PairedBy by);
[[nodiscard]] Value trendJson(const Trend &trend);

} // namespace snugwalk::cli
