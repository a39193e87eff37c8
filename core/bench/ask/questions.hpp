// SPDX-License-Identifier: Apache-2.0
// Who brings which questions: one table a subject, in the order of the bench.
#pragma once

#include <span>

#include "bench/ask/question.hpp"

namespace snugwalk {

[[nodiscard]] std::span<const BenchQuestion> tireQuestions();
[[nodiscard]] std::span<const BenchQuestion> tireCareQuestions();
[[nodiscard]] std::span<const BenchQuestion> wheelQuestions();
[[nodiscard]] std::span<const BenchQuestion> hubQuestions();
[[nodiscard]] std::span<const BenchQuestion> weightQuestions();
[[nodiscard]] std::span<const BenchQuestion> jointQuestions();
[[nodiscard]] std::span<const BenchQuestion> fastenerQuestions();
[[nodiscard]] std::span<const BenchQuestion> electricQuestions();
[[nodiscard]] std::span<const BenchQuestion> lampQuestions();
[[nodiscard]] std::span<const BenchQuestion> gasQuestions();
[[nodiscard]] std::span<const BenchQuestion> waterQuestions();
[[nodiscard]] std::span<const BenchQuestion> brakeQuestions();

} // namespace snugwalk
