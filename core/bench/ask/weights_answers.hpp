// SPDX-License-Identifier: Apache-2.0
// The answers to the questions about weights.
#pragma once

#include "bench/ask/question.hpp"
#include "bench/ask/typed.hpp"
#include "bench/weights/weighing.hpp"

namespace snugwalk {

[[nodiscard]] Result<BenchAnswer> answerWeigh(const BenchTyped &typed);
[[nodiscard]] Result<BenchAnswer> answerSides(const BenchTyped &typed);
[[nodiscard]] Result<BenchAnswer> answerShift(const BenchTyped &typed);
[[nodiscard]] Result<BenchAnswer> answerPacking(const BenchTyped &typed);
[[nodiscard]] Result<BenchAnswer> answerLiquid(const BenchTyped &typed);
[[nodiscard]] Result<BenchAnswer> answerLever(const BenchTyped &typed);

/// The band of a kind: travel, fifth or light.
[[nodiscard]] TongueBand bandOf(std::string_view kind);

/// A step of 20 in the unit that the weights of `name` were typed in; common practice.
[[nodiscard]] Mass usualDivision(const BenchTyped &typed, std::string_view name);

} // namespace snugwalk
