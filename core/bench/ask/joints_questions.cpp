// SPDX-License-Identifier: Apache-2.0
// What the bench asks about sealant and fasteners.
#include "bench/ask/questions.hpp"

namespace snugwalk {

std::span<const BenchQuestion> jointQuestions() { return {}; }

} // namespace snugwalk
