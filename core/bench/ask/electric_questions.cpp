// SPDX-License-Identifier: Apache-2.0
// What the bench asks about the 12 V side.
#include "bench/ask/questions.hpp"

namespace snugwalk {

std::span<const BenchQuestion> electricQuestions() { return {}; }

} // namespace snugwalk
