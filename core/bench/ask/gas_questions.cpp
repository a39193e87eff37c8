// SPDX-License-Identifier: Apache-2.0
// What the bench asks about gas, detectors and extinguishers.
#include "bench/ask/questions.hpp"

namespace snugwalk {

std::span<const BenchQuestion> gasQuestions() { return {}; }

} // namespace snugwalk
