// SPDX-License-Identifier: Apache-2.0
// What the bench asks about weights.
#include "bench/ask/questions.hpp"

namespace snugwalk {

std::span<const BenchQuestion> weightQuestions() { return {}; }

} // namespace snugwalk
