// SPDX-License-Identifier: Apache-2.0
// What the bench asks about brakes.
#include "bench/ask/questions.hpp"

namespace snugwalk {

std::span<const BenchQuestion> brakeQuestions() { return {}; }

} // namespace snugwalk
