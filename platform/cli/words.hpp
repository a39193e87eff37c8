// SPDX-License-Identifier: Apache-2.0
// Lines of text for people, shared by the commands.
#pragma once

#include <string>

#include "catalogue/texts.hpp"
#include "rig/rig.hpp"
#include "walk/finding_state.hpp"
#include "walk/progress.hpp"

namespace snugwalk::cli {

[[nodiscard]] std::string rigWords(const Rig &rig, UnitSystem units);
/// "107 points: 98 pass, 3 attention, 1 not fitted, 2 could not look, 3 not yet looked at".
[[nodiscard]] std::string countWords(const Counts &counts);
[[nodiscard]] Value countsValue(const Counts &counts);
/// "pass", "attention", "could not look" …
[[nodiscard]] std::string stateWords(MarkState state);
/// "14 mm" or "3" or "".
[[nodiscard]] std::string extentWords(const std::optional<Extent> &extent, UnitSystem units);
/// "380 kPa at wheel 1L".
[[nodiscard]] std::string readingWords(const Reading &reading, const Texts &texts, UnitSystem units);
/// Left-aligned columns, two spaces between; counts characters, not bytes.
[[nodiscard]] std::string padded(const std::string &text, std::size_t width);

} // namespace snugwalk::cli
