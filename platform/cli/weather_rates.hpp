// SPDX-License-Identifier: Apache-2.0
// What the commands about places share: the world's tables, and rates as JSON and words.
#pragma once

#include <string>

#include "base/value.hpp"
#include "weather/climate.hpp"
#include "weather/coast.hpp"
#include "weather/day_rates.hpp"

namespace snugwalk::cli {

struct WorldTables {
    Climate climate;
    Coast coast;
};

/// Both, or why not.
[[nodiscard]] Result<WorldTables> worldTables();

[[nodiscard]] Value ratesValue(const DayRates &rates);
/// "sun 0.92  heat 1.31 …" and a line end.
[[nodiscard]] std::string rateWords(const DayRates &rates);

} // namespace snugwalk::cli
