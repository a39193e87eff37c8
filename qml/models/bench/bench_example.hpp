// SPDX-License-Identifier: Apache-2.0
// A question's worked example as what would be typed into its fields.
#pragma once

#include "bench/ask/typed.hpp"

namespace snugwalk {

/// Reads flags as a shell does: `--max-load "2680 lb" --wet 121`, in quotes of either kind.
[[nodiscard]] BenchTexts benchExample(const BenchQuestion &question);

} // namespace snugwalk
