// SPDX-License-Identifier: Apache-2.0
// Marks, counts, readings and rigs in words.
#pragma once

#include <string>

#include "catalogue/texts.hpp"
#include "compare/change.hpp"
#include "rig/rig.hpp"
#include "walk/finding_state.hpp"
#include "walk/progress.hpp"

namespace snugwalk {

[[nodiscard]] std::string rigWords(const Rig &rig, UnitSystem units);
/// "107 points: 98 pass, 3 attention, …".
[[nodiscard]] std::string countWords(const Counts &counts, const Texts &texts);
/// "pass", "attention", "could not look" …
[[nodiscard]] std::string stateWords(MarkState state, const Texts &texts);
[[nodiscard]] std::string changeWords(Change change, const Texts &texts);
/// "14 mm" or "3" or "".
[[nodiscard]] std::string extentWords(const std::optional<Extent> &extent, UnitSystem units);
/// "Cold pressure 380 kPa at wheel 1L".
[[nodiscard]] std::string readingWords(const Reading &reading, const Texts &texts, UnitSystem units);
/// Filled with blanks to `width` characters (not bytes), and two more.
[[nodiscard]] std::string padded(const std::string &text, std::size_t width);

} // namespace snugwalk
