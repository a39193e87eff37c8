// SPDX-License-Identifier: Apache-2.0
// The bench as one table of questions, and asking one of them.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "bench/ask/typed.hpp"

namespace snugwalk {

/// Every question, by subject in the order of the bench.
[[nodiscard]] const std::vector<BenchQuestion> &benchQuestions();
/// Nothing for an unknown name.
[[nodiscard]] const BenchQuestion *findBenchQuestion(std::string_view name);

/// The worked example as if it had been typed: `--load "2000 lb" --warm 2319`.
[[nodiscard]] BenchTexts exampleOf(const BenchQuestion &question);

/// Reads what was typed and works it out. Every figure names the inputs that were taken as usual and warns
/// `unit_assumed` where a bare number was read in the person's units.
/// \returns errors of `BenchTyped::read` and of the computation, with the input's name in `where`.
[[nodiscard]] Result<BenchAnswer> askBench(const BenchQuestion &question, const BenchTexts &texts,
                                           UnitSystem units, CivilDate today);

} // namespace snugwalk
