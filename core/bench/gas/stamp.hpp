// SPDX-License-Identifier: Apache-2.0
// A date as it is stamped into a collar or printed on a back.
#pragma once

#include <optional>
#include <string_view>

#include "base/time.hpp"

namespace snugwalk {

/// "04-19", "4/19", "04 2019", "2019-04", "2019-04-30". Without a day it is the first of the month, so that
/// nothing is due later than it should be. Two digits of a year mean the last century from 50 on.
/// Tests: tests/unit/bench/tst_typed_sizes.cpp
[[nodiscard]] std::optional<CivilDate> parseStamp(std::string_view text);

} // namespace snugwalk
