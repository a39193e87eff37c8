// SPDX-License-Identifier: Apache-2.0
// Reasons, calls and due dates in sentences.
#pragma once

#include <string>

#include "catalogue/texts.hpp"
#include "round/state.hpp"

namespace snugwalk {

[[nodiscard]] std::string reasonWords(const Reason &reason, const Texts &texts, UnitSystem units);
/// "do not move it", "mend soon, 64", "watch, 31".
[[nodiscard]] std::string callWords(const Concern &concern, const Texts &texts);
/// "past due, 2026-11-01", "each move", "never looked at".
[[nodiscard]] std::string whenWords(const DueBand &band, const Texts &texts);

} // namespace snugwalk
