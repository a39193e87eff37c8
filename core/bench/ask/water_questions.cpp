// SPDX-License-Identifier: Apache-2.0
// What the bench asks about water, winter and moisture.
#include "bench/ask/questions.hpp"

namespace snugwalk {

std::span<const BenchQuestion> waterQuestions() { return {}; }

} // namespace snugwalk
