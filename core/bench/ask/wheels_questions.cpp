// SPDX-License-Identifier: Apache-2.0
// What the bench asks about wheel nuts.
#include "bench/ask/questions.hpp"

namespace snugwalk {

std::span<const BenchQuestion> wheelQuestions() { return {}; }

} // namespace snugwalk
