// SPDX-License-Identifier: Apache-2.0
// What the bench asks about bearings and hubs.
#include "bench/ask/questions.hpp"

namespace snugwalk {

std::span<const BenchQuestion> hubQuestions() { return {}; }

} // namespace snugwalk
